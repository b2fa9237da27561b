// What are the fields of a record, in words?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { frozenInPlace } from "../../quantity/frozen.ts";
import type { SchemaWords } from "../../shapes/index.ts";

/**
 * What each type of the record is, and each of its fields: the descriptions of its JSON Schema.
 *
 * Source: the doc comments of the types.
 *
 * @example
 * ```ts
 * import { jsonSchemaOf, recordCodec, recordWords } from "hvac-install-math/wire";
 *
 * recordWords.Site?.altitude; // => Altitude above sea level: gives the average atmosphere where none was measured.
 * JSON.stringify(jsonSchemaOf(recordCodec, recordWords)).includes("Where the installation is."); // => true
 * ```
 */
export const recordWords: SchemaWords = /* @__PURE__ */ frozenInPlace({
  Site: {
    "": "Where the installation is.",
    name: "How the site is called.",
    altitude: "Altitude above sea level: gives the average atmosphere where none was measured.",
    atmosphere: "Station pressure by a barometer; goes before the altitude.",
  },
  OnFile: {
    "": "Under which names the equipment and the instruments are kept on file, apart from the record; what the record states itself goes before them. See completeRecord.",
    equipment: "Name of the equipment: plates and manual.",
    instruments: "Name of the set of instruments.",
  },
  UnitPlate: {
    "": "A unit by its plate.",
    model: "Model designation as printed.",
    serialNumber: "Serial number.",
    ports:
      "Sizes of its ports, flared or brazed; for an indoor unit those of its own. An outdoor unit whose pairs differ leaves them out: each indoor unit states its own.",
    capacity: "Rated capacity of an indoor unit, for the combination of several.",
  },
  EquipmentVoltageRange: {
    minimum: "Lowest voltage allowed.",
    maximum: "Highest voltage allowed.",
  },
  ManualRunOilTraps: { above: "Lift that still needs none.", spacing: "Height between traps." },
  ManualRunExtraOil: {
    beyond: "Length that the factory's oil covers.",
    per: "Step of length.",
    volume: "Oil for a step.",
  },
  ManualRun: {
    maximumLength: "Longest run, one way.",
    minimumLength: "Shortest run: below it come noise, vibration and liquid return.",
    maximumLift: "Largest height difference of the two units.",
    maximumLiftOutdoorAbove:
      "Largest height difference where the outdoor unit is the higher one, if the manual tells the two apart.",
    maximumBends: "Most bends, a whole number.",
    bendEquivalentLength:
      "Length of straight tube that a bend counts for; maximumLength then holds the equivalent length.",
    oilTraps:
      "Oil traps in the vapor riser: one for every spacing where the lift is more than above.",
    extraOil: "Oil to add: volume for every started per beyond beyond.",
  },
  ManualChargeRate: { mass: "Mass, 0 or more.", per: "For this much length, more than 0." },
  Manual: {
    "": "What the unit's manual says.",
    run: "Limits of the run.",
    preChargedLength: "Length of line that the factory charge covers.",
    chargeRate: "Added charge per length.",
    preChargedFor:
      "Whether the pre-charged length counts for each run or for the sum of them; asked for where there are several.",
    shortLineRule: "What happens below the pre-charged length.",
    unusedPortAllowance:
      "Mass that the manual adds, or takes off (negative), for each pair of ports that stays unused.",
    chargeAllowance:
      "Mass that the manual adds for the whole system, or takes off (negative), whatever the lengths: what the factory put in for a line of its own, where the rate counts for the whole length.",
    leastConnected: "Least capacity of all indoor units together.",
    mostConnected: "Largest capacity of all indoor units together.",
    linkCable: "Cable between the units, as the manual words it.",
    maximumTotalLength: "Largest length of all runs together.",
    maximumIndoorLift: "Largest height difference between two indoor units.",
    testPressure: "Least pressure of the tightness test.",
    testHold: "Shortest hold of the tightness test.",
  },
  Equipment: {
    "": "The equipment as its plates describe it.",
    construction: "How its circuit is closed; split when left out.",
    duty: "Whether it cools, heats or both.",
    capacity: "Rated capacity.",
    outdoorUnit: "Outdoor unit.",
    portPairs:
      "Pairs of ports of the outdoor unit; asked for where several indoor units can be joined to it.",
    refrigerant: "Refrigerant by its ASHRAE 34 designation, however it is written.",
    factoryCharge: "Charge that the unit came with.",
    maximumCharge: "Most that the unit may hold.",
    lowestMarkedPressure: "The lowest pressure marked on anything under test.",
    minimumCircuitAmpacity: "Minimum circuit ampacity.",
    maximumOvercurrentProtection: "Largest overcurrent protection.",
    ratedCurrent: "Under metric rules, in place of the ampacity: the rated current.",
    maximumFuse:
      "Under metric rules, in place of the largest protection: the largest fuse that nameplate or manual allows.",
    protectionMarking: "How the plate words it.",
    ratedLoadCurrent: "Sum of the rated-load currents that run together.",
    lockedRotorCurrent: "Locked-rotor current.",
    ratedVoltages: "Rated voltages: one, or both of a dual plate.",
    voltageRange: "Range of voltage that the plate prints.",
    meteringDevice: "What sets the flow of refrigerant.",
    compressor: "How the compressor runs.",
    expansion: "Where the refrigerant expands.",
    manual: "What the manual says.",
  },
  InstrumentsTestGauge: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    drift:
      "How far zero and hysteresis may wander from the first to the last reading, ±. When left out, a quarter of the accuracy (at least one display step) and 2 % of it for each kelvin that the temperature moved are assumed.",
    separateInstruments:
      "Two different gauges read start and end, so that their errors do not cancel.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
  InstrumentsGasThermometer: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    followsGasWithin:
      "How far the reading may be from the mean gas temperature, differently at each reading, ±: sun on one pipe, indoor and outdoor parts, lag, warmth of the fill. Under the insulation of tubing in one place and in shade, ±0.5 K. When left out, a bound that grows with the swing, the time and the volume is assumed.",
    separateInstruments:
      "Two different thermometers read start and end, so that their errors do not cancel.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
  InstrumentsVacuumGaugeResolutionItem: {
    upTo: "Largest reading of the range.",
    resolution: "Smallest step of the display in it.",
  },
  InstrumentsVacuumGauge: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    resolution:
      "Smallest step of the display; one per range when it changes with the reading. Found from the readings when left out; a display that stands still is believed only with it.",
    accuracy: "Stated limits of error as a part of the reading; ±10 % is assumed when left out.",
    range: "Largest reading; readings at or above it are over range.",
  },
  InstrumentsScale: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
  InstrumentsTape: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
  InstrumentsTorqueWrench: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    relativeAccuracy: "Limits of error as a fraction of the reading: percent(4).",
    accuracy: "Limits of error as a torque, ±.",
    resolution: "Smallest step of the scale.",
  },
  InstrumentsVoltmeter: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracyOfReading: "Limits of error that grow with the reading, ±; added to accuracy.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
  InstrumentsServiceGauge: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
  InstrumentsLineThermometer: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
  InstrumentIdentity: {
    "": "Which instrument it is and how long its calibration holds.",
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
  },
  InstrumentsClampMeter: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracyOfReading: "Limits of error that grow with the reading, ±; added to accuracy.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
  Instruments: {
    "": "The instruments with their accuracy and calibration.",
    testGauge: "Gauge of the pressure test.",
    gasThermometer: "Thermometer of the pressure test.",
    vacuumGauge: "Vacuum gauge.",
    scale: "Charging scale.",
    tape: "Tape or measuring wheel for the tubing.",
    torqueWrench: "Torque wrench.",
    voltmeter: "Voltmeter.",
    serviceGauge: "Gauge on the running unit.",
    lineThermometer: "Thermometer on the lines of the running unit.",
    level: "Level or laser of the drain; its limits of error stand beside each reading.",
    airThermometer: "Thermometer in the air of the running unit.",
    clampMeter: 'Clamp meter on the running unit; "±(2 % + 5 counts)" as Meter shows.',
  },
  PlannedCylinder: {
    waterVolume:
      "Water volume, as stamped on it, at most 150 L: not the volume of gas at 1 atm by which cylinders are sold. A 40 ft³ cylinder holds about 8 L of water.",
    pressure: "What its gauge shows now, up to 31 MPa absolute.",
    temperature: "Temperature of the cylinder; that of the system when left out.",
  },
  Planned: {
    "": "What a plan rests on besides plates, manual and runs.",
    stock: "The lengths in which a line set can be bought.",
    cuttable: "Whether it can be cut: false for lines that come charged or with fixed ends.",
    slack: "Extra per run for measuring and making ends.",
    serviceLoop: "Extra per run that is kept as a loop for service.",
    insulation: "Thickness of the insulation on each line.",
    drainDiameter: "Outside diameter of the drain in the bundle.",
    cableDiameter: "Outside diameter of the cable in the bundle.",
    fillTemperature: "Gas temperature to expect at the nitrogen fill.",
    laterTemperature: "Gas temperature to expect at the reading after the hold.",
    warmest: "Warmest that sun and house may make the gas while it stands.",
    fillPressure: "Pressure to fill to; that of the manual when left out.",
    hold: "Time between the fill and the reading.",
    leakRate: "Smallest leak that the test should show, as nitrogen at the test pressure.",
    cylinder: "The nitrogen cylinder.",
    pump: "Speed of the vacuum pump at its inlet.",
  },
  TubingLiquid: {
    outsideDiameter: "Outside diameter, 1 mm to 300 mm.",
    wall: "Wall thickness, more than 0 and less than half the outside diameter.",
  },
  Tubing: {
    "": "The lines as they run.",
    liquid: "Liquid line.",
    vapor: "Vapor line.",
    way: "The way along the wall, bends followed, as it was paced off before the tube was cut.",
    length: "Length one way, with what is coiled up.",
    lengthIs:
      "Whether the length was measured, or is the nominal length of a factory-made line set that was not cut: then no tape stands behind it. When left out, nominal for pre-charged lines with couplings, otherwise measured.",
    lift: "Height difference of the units.",
    outdoorUnit: "Where the outdoor unit stands.",
    bends: "Number of bends.",
    jointCount:
      "How many joints there are, where they are more than one at each end of each line: adapters, couplings.",
    otherVolume:
      "Inner volume of all else on this run that is tested together with the tubes: coils, manifold.",
    at: "When it was measured.",
  },
  JointTorqueWindow: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
  Joint: {
    "": "One joint. A flare needs torque or turn, and its tube or its line; a brazed joint nitrogenFlowed; a pressed joint and a pre-charged coupling inspected.",
    name: "Where it is; by line and end where left out.",
    line: "The line on which it is.",
    end: "The end of the line at which it is.",
    kind: "How it was made; a flare where a torque or a turn is stated.",
    tube: "Size of a flared tube; that of its line where left out.",
    torque: "Torque at which the wrench clicked.",
    torqueWindow: "The manual's window of torque.",
    manualReadAgain:
      "Whether the manual was read again and says so: then its window decides, whatever else is published.",
    turn: "Turn from the point where the torque rises, where there was no wrench.",
    flareDiameter: "Outside diameter of the flare.",
    nitrogenFlowed: "Whether nitrogen flowed through the tube while it was brazed.",
    inspected:
      "Whether it was looked at, or leak-tested once it held refrigerant, and found right.",
    at: "When it was made.",
  },
  RunManual: {
    "": "Limits and charge rule of one run, where they differ from those of all.",
    run: "Limits of the run.",
    preChargedLength: "Length of line that the factory charge covers on this run.",
    chargeRate: "Added charge per length.",
    chargeAllowance:
      "Mass that the manual adds for this indoor unit, or takes off (negative), whatever the length.",
  },
  DrainSlope1: {
    slope: "From a digital level that shows per cent or mm/m.",
    accuracy: "Limits of error, ±.",
  },
  DrainSlope2: {
    angle: "From a digital level that shows degrees.",
    accuracy: "Limits of error, ±.",
  },
  DrainSlope3: {
    gap: "Gap below a spirit level when its bubble is centerd.",
    levelLength: "Length of that level.",
    accuracy: "Limits of error of the gap, ±.",
  },
  DrainSlope4: {
    heightAtStart: "Height where the water starts, from a datum such as a laser line.",
    heightAtEnd: "Height where it leaves, from the same datum.",
    run: "Horizontal distance between the two.",
    accuracy: "Limits of error of each height, ±.",
  },
  DrainRoute: {
    outdoors: "Whether part of it is outdoors.",
    lowestOutdoorTemperature: "Coldest outdoor temperature to be expected.",
    aboveFinishedSpace: "Whether the unit hangs above finished space.",
    pumped: "Whether a pump lifts the water.",
  },
  DrainPumpCurveItem: { lift: "Lift, 0 or more.", flow: "Flow at that lift, 0 or more." },
  DrainPump: {
    condensate: "Water that comes, above 0: from condensateRate, at the wettest conditions.",
    lift: "Height from the water to the highest point of the hose, 0 or more.",
    curve: "At least two points, by rising lift, the flow not rising.",
    reservoir: "Volume between the switch points of its float, above 0.",
    margin: "How many times the condensate the pump has to move, 1 or more; 2 when left out.",
  },
  Drain: {
    "": "The condensate drain: slope where it runs off by itself, pump where it is lifted.",
    slope:
      "Measured slope of the pipe; beside a pump, of the part that still drains by gravity, if any.",
    vertical:
      "Whether the pipe falls straight down from the unit, so that it has no slope to measure.",
    requiredSlope: "The slope asked for; that of the codes when left out.",
    run: "Horizontal length.",
    fall: "Height from the outlet of the pan, or of its trap, down to the discharge; negative where that lies higher. Not judged beside a pump.",
    panPressure:
      "Static pressure at the pan against the room, with dirty filters; 0 for most wall units.",
    route: "Where it runs.",
    unitPitch: "Measured pitch of the indoor unit towards its drain.",
    pump: "The pump and what it has to do.",
    waterRanOff: "Whether water that was poured into the pan came out where it should.",
    at: "When it was measured.",
  },
  Room: {
    "": "The smallest room into which the charge can leak.",
    floorArea: "Floor area, for flammable refrigerants.",
    volume: "Volume, for the concentration limit.",
    ceilingHeight: "Height of the ceiling: holds area and volume against each other.",
    place: "Where the indoor unit is; one of this and installationHeight.",
    installationHeight:
      "Height of its underside, where the manual states one; one of this and place.",
    edition: "Edition of the rule.",
    floorAreaAccuracy: "Limits of error of the floor area, ±.",
    volumeAccuracy: "Limits of error of the volume, ±.",
  },
  Run: {
    "": "One run: a liquid and a vapor line between the outdoor unit, or a branch box, and what stands at their other end.",
    name: "Its own name, by which tests and readings refer to it: living room, A.",
    port: "Port of the outdoor unit or branch box, as it is marked.",
    serves:
      "What stands at its end; an indoor unit when left out. A run to a branch box has no room and drain to ask for.",
    indoorUnits: "The indoor unit; several where branches of this run serve them together.",
    tubing: "The lines.",
    joints: "Every joint of the lines.",
    manual: "What the manual says of this run in place of what it says of all.",
    drain: "The condensate drain of its indoor unit.",
    room: "The smallest room into which refrigerant can leak at its indoor unit; of a monobloc the room that it stands in.",
  },
  PressureTestPartReadingsItem: {
    pressure: "What the gauge or absolute sensor shows; the same kind in all readings of a test.",
    temperature: "Gas temperature, per zone where zones differ, −40 °C to 70 °C.",
    elapsed: "Time since the test began; needed for a leak rate.",
    atmosphere:
      "Station pressure at this reading, where it differs from the one given for the whole test.",
  },
  PressureTestPartCriterion1: {
    maximumDrop: "Largest drop, above 0; more than 1 % of the fill pressure counts as 1 %.",
    per: "The time for which the drop is allowed, so that the limit is a rate; the whole test when left out.",
  },
  PressureTestPartCriterion2: {
    maximumLeakRate:
      "Largest nitrogen throughput at the temperature of the test, above 0; one that lets more than 1 % of the fill pressure go in the test counts as 1 %.",
  },
  TestRequirement: {
    "": "What a test has to reach where the manual does not say, and on whose word.",
    pressure: "Least pressure of the test.",
    hold: "Shortest hold.",
    standing: "Where these figures come from.",
  },
  PressureTestPartElsewhere: {
    share: "Its share of the volume, 0 to below 1; 0 says that every part has its thermometer.",
    change:
      "How much its temperature may have changed from the first to the last reading, ±; when left out, what a day and a house do in that time is assumed.",
  },
  PressureTestPart: {
    "": "A nitrogen test.",
    covers: "Names of the runs that it covers; all of them when left out.",
    readings: "Two readings or more, in order. Three or more need elapsed.",
    criterion: "The limit that was stated; without one nothing passes.",
    requirement: "Pressure and hold where the manual says nothing.",
    wall: "What the walls are made of.",
    sinceFill:
      "Time from the end of the fill to the first reading; without it the gas counts as warm from the fill.",
    elsewhere: "What part of the gas lies where no thermometer is.",
    zoneShares:
      "Share of the volume at each thermometer, in the order of the temperatures of a reading, 100 % together; needed where readings have several.",
    at: "When the last reading was taken.",
  },
  EvacuationReadingsItem: {
    elapsed: "Time since the system was isolated from the pump.",
    pressure: "What the gauge shows.",
  },
  EvacuationHoses: {
    material: "rubber lets air through, low-permeation has a barrier, metal lets none through.",
    length: "Length of all of them together, 0 to 30 m.",
  },
  EvacuationBlankTest: {
    rate: "Rise of the pressure by the end of the blank test, 0 or more.",
    volume: "Inner volume of hoses and gauge.",
  },
  Evacuation: {
    "": "The watch after an evacuation.",
    covers: "Names of the runs that it covers; all of them when left out.",
    readings: "The log since the pump was valved off.",
    policy: "Name of the acceptance policy, a key of acceptancePolicies.",
    ambient: "Temperature of the warmest part.",
    coldest: "Temperature of the coldest part.",
    leakLimit: "Largest leak that is accepted.",
    isolation:
      "How the pump was shut off; a pressure that falls or stays flat is believed only where it is known.",
    hoses: "Hoses within the isolated part.",
    blankTest: "What hoses and gauge did by themselves.",
    at: "When the last reading was taken.",
  },
  Charge: {
    "": "What was weighed in.",
    added: "Added to the factory charge; negative when taken out.",
    tolerance: "How far from the manual's figure is still right.",
    fedAs: "How it was fed: a blend is charged as liquid, or its make-up shifts.",
    at: "When.",
  },
  Valves: {
    "": "The service valves.",
    openedAt: "When they were opened; the first of them, where there are several pairs.",
  },
  CircuitPlate: {
    "": "The plate of a unit that is fed by a circuit of its own, such as an air handler with a heater.",
    minimumCircuitAmpacity: "Minimum circuit ampacity.",
    maximumOvercurrentProtection: "Largest overcurrent protection.",
    ratedCurrent: "Under metric rules, in place of the ampacity: the rated current.",
    maximumFuse:
      "Under metric rules, in place of the largest protection: the largest fuse that nameplate or manual allows.",
    protectionMarking: "How the plate words it.",
    ratedLoadCurrent: "Sum of the rated-load currents that run together.",
  },
  CircuitSharedWithItem: {
    kind: "unit: the current is its minimum circuit ampacity. other: it is the load's rated current.",
    current: "The current, more than 0.",
    maximumOvercurrentProtection: "Largest protection that its nameplate allows.",
    continuous:
      "Whether another load runs for three hours or more, so that it counts 125 %; assumed, on the safe side.",
  },
  CircuitWiring1: {
    insulation: "Rating of the insulation. For NM cable (NM-B, NMD90) 90 °C.",
    terminations:
      "What the terminals at both ends are marked for; when left out, 60 °C up to 100 A and 75 °C above.",
    cable: '"NM" for non-metallic sheathed cable, which some rules hold to its 60 °C column.',
    currentCarryingConductors:
      "Loaded conductors in the same raceway or bundle, grounding conductors not counted; 3 or fewer are assumed.",
    aboveRoof: "Height above a roof in the sun; leave out where there is no roof.",
    conduit: "Conduit, for the alternating-current impedance; used together with a power factor.",
    material: "Material of the conductors.",
    ambient:
      "Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground.",
    length: "One-way length, more than 0; without it no voltage drop is calculated.",
    stranding: "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
  },
  CircuitWiring2: {
    insulation: '"70 °C" for PVC, "90 °C" for XLPE and EPR.',
    method: "Reference method.",
    groupedCircuits: "Circuits that run together, this one included; 1 is assumed.",
    grouping: "How they run together; bunched or enclosed is assumed, in the ground touching.",
    soilResistivity: "Thermal resistivity of the soil in K·m/W, methods D1 and D2; 2.5 is assumed.",
    insulationLength: "Length over which the cable is surrounded by thermal insulation.",
    material: "Material of the conductors.",
    ambient:
      "Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground.",
    length: "One-way length, more than 0; without it no voltage drop is calculated.",
    stranding: "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
  },
  CircuitInstalledDevice: {
    kind: "Breaker or fuse.",
    rating: "Rating, more than 0.",
    poles: "Poles that open together; 4 where a device for three phases opens the neutral too.",
    voltageRating: "Voltage marking.",
    hacr: "Whether a breaker is marked HACR.",
    curve: "Curve of a miniature breaker.",
  },
  CircuitInstalledWhip: {
    conductor: "Its conductors.",
    wiring: "How it runs; like the run when left out.",
  },
  CircuitInstalledFault1: {
    current: "Fault current, more than 0, from the impedance of the fault loop.",
    clearingTime: "Time until the device clears it, more than 0 up to 5 s.",
  },
  CircuitInstalledFault2: {
    letThrough: "Let-through energy of the device, I²t, in A²s, more than 0.",
  },
  CircuitInstalledDisconnectWorkingSpace: {
    depth: "Depth in front.",
    width: "Width.",
    height: "Clear height from the ground or platform.",
    equipmentWidth: "Width of the equipment, where it is wider than the least width.",
    condition:
      "Opposite the live parts: 1 nothing grounded, 2 grounded parts, 3 other live parts; 3 is assumed.",
  },
  CircuitInstalledDisconnect: {
    rating: "Rating, more than 0.",
    fuse: "Rating of the fuses in it; leave out for a non-fused one.",
    visible: "Whether it can be seen from the unit.",
    distance: "How far it is from the unit.",
    readilyAccessible: "Whether it can be reached without a ladder and without moving anything.",
    inTheWay: "Whether it hides the nameplate or hangs on a panel that has to come off.",
    lockable: "Whether it can be locked open.",
    onUnit: "Whether it is mounted on the unit itself.",
    workingSpace: "Clear space in front of it.",
  },
  CircuitInstalledServiceReceptacle: {
    distance: "How far it is from the unit, on the same level.",
    onLoadSide: "Whether it is fed from the load side of the unit's disconnect.",
  },
  CircuitInstalled: {
    device: "Breaker or fuses.",
    conductor: "Circuit conductors.",
    whip: "The whip, where it differs from the run.",
    aluminumTerminals:
      "Whether all terminals are marked for aluminum; asked for with aluminum conductors.",
    equipmentGrounding: "Equipment grounding (protective) conductor.",
    groundingMaterial:
      "Material of the grounding conductor; that of the circuit conductors when left out.",
    groundingByRaceway: "Whether the metal raceway alone serves as grounding path.",
    compressionFittings:
      "Whether that raceway has compression fittings, with which it does not do alone on a roof.",
    fault: "Heat of a fault to ground, for a protective conductor below the table's size.",
    disconnect: "Disconnect at the unit.",
    residualCurrent:
      "Rated residual current of the device: 30 mA, or 5 mA for a class A ground-fault device (UL 943, 4 to 6 mA, from memory); false where there is none.",
    serviceReceptacle: "The service receptacle.",
  },
  CircuitVerificationsItem: {
    clause: "The clause, as the verdict names it in toVerify.",
    complies: "Whether the circuit complies with it.",
    by: "Name of who checked it.",
    at: 'The day on which it was checked, as "2026-11-29", or a time of that day.',
  },
  Circuit: {
    "": "A branch circuit.",
    name: "What it feeds: outdoor unit, air handler.",
    plate: "The plate of what it feeds, where that is not the outdoor unit.",
    nameplateReadAgain:
      "Whether the plate was read a second time, so that figures that look wrong are taken as printed.",
    feeds: "What kind of unit it feeds.",
    sharedWith: "What else is on it; an empty list where it feeds nothing else.",
    earthing: "Earthing of the supply, under metric rules.",
    rules:
      'The adopted rules by the designation of their standard: "nfpa-70-2023" for nec2023, see circuitRules.',
    wiring: "How the cable runs.",
    installed: "What is fitted.",
    powerFactor: "Power factor while running.",
    occupancy: "Where it stands.",
    groundFaultText:
      'Which text of the clause on ground-fault protection is adopted: "as printed", an amendment\'s name, or "not adopted".',
    verifications:
      "Who checked it by the text of clauses that the verdict asked for, and what they found.",
    at: "When it was inspected.",
  },
  SupplyPartReadingsItem1: {
    voltage: "Voltage between the two conductors that feed the unit.",
    current: "Current of the unit at that moment.",
    lineToGround: "Voltages from each of the two conductors to ground, where they were read too.",
    state: "What the unit did.",
    elapsed: "Time since the first reading of a log; on all readings or on none, and growing.",
  },
  SupplyPartReadingsItem2: {
    lineToLine: "Voltages between lines 1 and 2, 2 and 3, 3 and 1.",
    currents: "Currents of lines 1, 2 and 3 at that moment.",
    state: "What the unit did.",
    elapsed: "Time since the first reading of a log; on all readings or on none, and growing.",
  },
  SupplyPart: {
    "": "The readings of the supply.",
    readings: "One reading or a log.",
    measuredAt: "At the service entrance or at the unit.",
    standard: "The standard of the supply by name.",
    range:
      "The range that the utility or the national code promises, such as 127 V ± 10 %; it goes before any standard.",
    unbalanceLimit: "Largest voltage unbalance that the maker allows.",
    at: "When the first reading was taken, the unit being off.",
  },
  Power: {
    "": "Circuits, supply and the moment of power.",
    voltage: "Nominal voltage between the conductors that feed the unit.",
    phases: "Phases that feed the unit.",
    system:
      "The service, as its rules write it: 220Y/127 V by American rules is 127/220 V by metric ones.",
    circuits: "The branch circuits: one, or one per unit with a supply of its own.",
    supply: "The readings of the supply.",
    energizedAt: "When the unit was first switched on.",
  },
  OperatingReadingEvaporatorApproach: { low: "Smallest difference.", high: "Largest difference." },
  ChargeReading: {
    "": "Superheat or subcooling of a unit that can be checked by it.",
    pressure: "Gauge reading.",
    lineTemperature: "Line temperature.",
    pressureDrop: "Pressure lost between gauge and thermometer.",
    target: "What it should be.",
    tolerance: "How far from it is still right.",
  },
  AirSideReading: {
    "": "Readings in the air and on the supply, for a unit on which no gauge belongs.",
    supplyAir: "Air that leaves the indoor coil; what enters it is indoorTemperature.",
    least: "Least difference of the two that the manual asks for.",
    largest: "Largest difference of the two that the manual allows.",
    current: "Current of the outdoor unit.",
    fullSpeed: "Whether the compressor ran at its full speed, or in the test mode of the manual.",
  },
  OperatingReading: {
    "": "A set of readings on the running system.",
    covers:
      "Names of the runs whose indoor units were read; all of them when left out. Heads that ran together and were each read have an entry each, of the same time.",
    mode: "What the unit did.",
    indoorTemperature: "Air that enters the indoor coil.",
    outdoorTemperature: "Air that enters the outdoor coil.",
    evaporatorApproach: "How far the evaporating temperature may lie below its air.",
    condenserApproach: "How far the condensing temperature may lie above its air.",
    pressure: "What the gauge shows.",
    port: "The port that it is on.",
    charge: "Superheat or subcooling.",
    airSide: "Air and current, in place of a gauge.",
    at: "When.",
  },
  Waiver: {
    "": "The word of a person that a step does not apply to this installation. It never makes the step pass: the assessment lists it among its first reasons and its assumptions.",
    step: "Which step.",
    reason:
      "Why it does not apply: one of the reasons that fit the step and the equipment; without one it does not count.",
    run: "Name of the run for which it holds; all of them when left out.",
    note: "More about it, in one's own words; kept, never judged.",
    by: "Name of who declares it; a letter or a digit at least.",
    at: "When.",
  },
  Photo: {
    "": "A photo, by reference: the record holds no pictures.",
    reference: "File name, address or key where the app keeps it.",
    of: "Path of the part of the record that it shows, such as runs[0].joints[0].",
    caption: "What is to be seen.",
    at: "When it was taken.",
    digest: "Digest of the file, such as sha-256:…, so that an exchanged picture shows.",
  },
  Signature: {
    "": "A signature by name and time, as the caller states them. The library verifies neither.",
    name: "Name of who signs.",
    role: "As what: installer, inspector, owner.",
    at: "When.",
  },
  Amendment: {
    "": "One change of a record. What was there before is kept in previous; without previous nothing was.",
    path: "The field, part or list that changed, such as runs[0].tubing.length or waivers.",
    previous: "What stood there before; missing when nothing did.",
    kind: "Whether the record was wrong, or the work was done anew; a joint of which it is not said counts as made anew.",
    by: "Who changed it.",
    at: "When.",
    reason: "Why.",
  },
  InstallationRecord: {
    "": "The record of one refrigerant system: one outdoor unit and one or more runs. Every part, and every field of a part, may still be missing: a half-filled record is valid, and assessInstallation says what is missing.",
    version: "Version of the format.",
    name: "Name of the job.",
    site: "Where it is.",
    onFile: "Equipment and instruments that are kept on file.",
    equipment: "What the plates and the manual say.",
    instruments: "What was measured with.",
    plan: "What is known before the work: stock, weather, cylinder.",
    runs: "The runs of line: one per indoor unit or per pair of ports.",
    pressureTests: "The nitrogen tests: one for all runs, or several that together cover them.",
    evacuations:
      "The evacuations and the watch after each: one for all runs, or several that together cover them.",
    charge: "The refrigerant that was weighed in.",
    valves: "The service valves.",
    power: "Circuits and supply.",
    operation: "Readings on the running system, which together cover the runs.",
    waivers: "The steps that do not apply here, each by the word of a person; never a pass.",
    photos: "Photos.",
    signatures: "Signatures.",
    history: "What was changed afterwards, the oldest first; written by amend.",
  },
});

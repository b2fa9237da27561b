// Which standard, handbook or paper says so? Every work that the code cites, once.
// Editions are those whose text or reproduction was used; local law may adopt another.
// Does not cover clauses: those stand in the citation beside the rule.
import { refuse } from "../quantity/check.ts";
import { frozenInPlace } from "../quantity/frozen.ts";

/**
 * A standard, handbook or paper.
 */
export interface Source {
  /**
   * How the figures were read: in a `reproduction` (another publication, an extract, an open data set),
   * from `memory` and reproduced by calculation where possible, or `none` where there is no text.
   * The paid text of the standards was not at hand: check a figure that matters against it.
   */
  readonly readAs: "reproduction" | "memory" | "none";
  /** Title, with the authors of a paper. */
  readonly title: string;
  /** Edition, number or year. */
  readonly edition: string;
  /** Publisher, or journal with volume and page. */
  readonly publisher: string;
  /** Digital object identifier, where there is one. */
  readonly doi?: string | undefined;
}

const works = {
  "abramowitz-stegun-1964": {
    readAs: "memory",
    title: "Handbook of Mathematical Functions (Abramowitz, M.; Stegun, I. A.)",
    edition: "1964",
    publisher: "U.S. National Bureau of Standards, AMS 55",
  },
  "akasaka-lemmon-2022": {
    readAs: "reproduction",
    title:
      "An International Standard Formulation for trans-1-Chloro-3,3,3-trifluoroprop-1-ene [R1233zd(E)] Covering Temperatures from the Triple-point Temperature to 450 K and Pressures up to 100 MPa (Akasaka, R.; Lemmon, E. W.)",
    edition: "2022",
    publisher: "J. Phys. Chem. Ref. Data 51, 023101",
    doi: "10.1063/5.0083026",
  },
  "ansi-c84-1-2020": {
    readAs: "reproduction",
    title: "Electric Power Systems Voltage Ratings (60 Hz)",
    edition: "ANSI C84.1-2020",
    publisher: "NEMA",
  },
  "as-nzs-3000": {
    readAs: "reproduction",
    title: "Electrical installations (Wiring Rules)",
    edition: "AS/NZS 3000:2018",
    publisher: "Standards Australia, Standards New Zealand",
  },
  "ashrae-15-2-2022": {
    readAs: "memory",
    title: "Safety Standard for Refrigeration Systems in Residential Applications",
    edition: "ANSI/ASHRAE Standard 15.2-2022",
    publisher: "ASHRAE",
  },
  "ashrae-15-2022": {
    readAs: "reproduction",
    title: "Safety Standard for Refrigeration Systems",
    edition: "ANSI/ASHRAE Standard 15-2022",
    publisher: "ASHRAE",
  },
  "ashrae-34-2022": {
    readAs: "reproduction",
    title: "Designation and Safety Classification of Refrigerants",
    edition: "ANSI/ASHRAE Standard 34-2022",
    publisher: "ASHRAE",
  },
  "ashrae-fundamentals-2021": {
    readAs: "memory",
    title: "ASHRAE Handbook, Fundamentals",
    edition: "2021",
    publisher: "ASHRAE",
  },
  "ashrae-refrigeration-2022": {
    readAs: "memory",
    title: "ASHRAE Handbook, Refrigeration",
    edition: "2022",
    publisher: "ASHRAE",
  },
  "asme-b31-5-2022": {
    readAs: "reproduction",
    title: "Refrigeration Piping and Heat Transfer Components",
    edition: "ASME B31.5-2022",
    publisher: "ASME",
  },
  "astm-b280-2020": {
    readAs: "reproduction",
    title:
      "Standard Specification for Seamless Copper Tube for Air Conditioning and Refrigeration Field Service",
    edition: "ASTM B280",
    publisher: "ASTM International",
  },
  "au-ozone-2024": {
    readAs: "reproduction",
    title:
      "Ozone Protection and Synthetic Greenhouse Gas Management rules: import and manufacture bans on air-conditioning equipment, as the licensing body and the trade press state them",
    edition: "read July 2025",
    publisher: "Commonwealth of Australia",
  },
  "bell-2022": {
    readAs: "reproduction",
    title:
      "Mixture Models for Refrigerants R-1234yf/134a, R-1234yf/1234ze(E), and R-134a/1234ze(E) and Interim Models for R-125/1234yf, R-1234ze(E)/227ea, and R-1234yf/152a (Bell, I. H.)",
    edition: "2022",
    publisher: "J. Phys. Chem. Ref. Data 51, 013103",
    doi: "10.1063/5.0086060",
  },
  "bell-2023": {
    readAs: "reproduction",
    title:
      "Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf (Bell, I. H.)",
    edition: "2023",
    publisher: "J. Phys. Chem. Ref. Data 52, 013101",
    doi: "10.1063/5.0135368",
  },
  "bell-2025": {
    readAs: "reproduction",
    title:
      "Modeling Mixtures Containing Refrigerants: Updated Interaction Parameters (Bell, I. H.)",
    edition: "2025",
    publisher: "J. Chem. Eng. Data",
    doi: "10.1021/acs.jced.4c00699",
  },
  "bs-7671": {
    readAs: "reproduction",
    title: "Requirements for Electrical Installations",
    edition: "BS 7671:2018+A2:2022",
    publisher: "BSI, IET",
  },
  "buecker-wagner-2006": {
    readAs: "reproduction",
    title:
      "Reference Equations of State for the Thermodynamic Properties of Fluid Phase n-Butane and Isobutane (Buecker, D.; Wagner, W.)",
    edition: "2006",
    publisher: "J. Phys. Chem. Ref. Data 35, 929-1019",
    doi: "10.1063/1.1901687",
  },
  "burnham-anderson-2002": {
    readAs: "memory",
    title:
      "Model Selection and Multimodel Inference: A Practical Information-Theoretic Approach (Burnham, K. P.; Anderson, D. R.)",
    edition: "2nd edition (2002)",
    publisher: "Springer",
  },
  "cec-part-1": {
    readAs: "reproduction",
    title: "Canadian Electrical Code, Part I",
    edition: "CSA C22.1:24; Section 28 in the form of C22.1:21",
    publisher: "CSA Group",
  },
  "cfr-40-1065-644": {
    readAs: "reproduction",
    title: "Vacuum-decay leak rate",
    edition: "40 CFR 1065.644",
    publisher: "U.S. Environmental Protection Agency",
  },
  "cfr-40-84": {
    readAs: "reproduction",
    title:
      "40 CFR Part 84, Phasedown of Hydrofluorocarbons, with 88 FR 73098, 88 FR 88825, 89 FR 100381 and 91 FR 31284",
    edition: "read June 2026",
    publisher: "United States",
  },
  "colebrook-1939": {
    readAs: "memory",
    title:
      "Turbulent flow in pipes, with particular reference to the transition region between the smooth and rough pipe laws (Colebrook, C. F.)",
    edition: "1939",
    publisher: "J. Inst. Civil Eng. 11(4), 133",
    doi: "10.1680/ijoti.1939.13150",
  },
  "common-practice": {
    readAs: "none",
    title: "Common practice of the trade, no source",
    edition: "",
    publisher: "",
  },
  "en-12735-1": {
    readAs: "reproduction",
    title:
      "Copper and copper alloys: seamless, round tubes for air conditioning and refrigeration, Part 1",
    edition: "EN 12735-1:2020",
    publisher: "CEN",
  },
  "en-378-1": {
    readAs: "reproduction",
    title: "Refrigerating systems and heat pumps: safety and environmental requirements, Part 1",
    edition: "EN 378-1:2016+A1:2020",
    publisher: "CEN",
  },
  "en-378-2": {
    readAs: "reproduction",
    title: "Refrigerating systems and heat pumps: safety and environmental requirements, Part 2",
    edition: "EN 378-2:2016",
    publisher: "CEN",
  },
  "en-50160": {
    readAs: "reproduction",
    title: "Voltage characteristics of electricity supplied by public electricity networks",
    edition: "EN 50160:2010+A3:2019",
    publisher: "CENELEC",
  },
  "esqcr-2002": {
    readAs: "memory",
    title: "Electricity Safety, Quality and Continuity Regulations, regulation 27",
    edition: "S.I. 2002/2665",
    publisher: "United Kingdom",
  },
  "eu-2024-573": {
    readAs: "reproduction",
    title: "Regulation (EU) 2024/573 on fluorinated greenhouse gases",
    edition: "consolidated 20 February 2024",
    publisher: "European Union",
  },
  "eu-517-2014": {
    readAs: "reproduction",
    title:
      "Regulation (EU) No 517/2014 on fluorinated greenhouse gases, Articles 2 and 4, Annexes I to IV",
    edition: "2014; repealed in the EU from 11 March 2024, retained in Great Britain",
    publisher: "European Union",
  },
  "from-memory": {
    readAs: "memory",
    title: "From memory, not checked against a source",
    edition: "",
    publisher: "",
  },
  "gao-2020": {
    readAs: "reproduction",
    title:
      "Thermodynamic Properties of Ammonia for Temperatures from the Melting Line to 725 K and Pressures to 1000 MPa (Gao, K.; Wu, J.; Bell, I. H.; Lemmon, E. W.)",
    edition: "2020",
    publisher: "J. Phys. Chem. Ref. Data 49, 013102",
    doi: "10.1063/1.5128269",
  },
  "iapws-r14-08": {
    readAs: "memory",
    title:
      "Revised Release on the Pressure along the Melting and Sublimation Curves of Ordinary Water Substance",
    edition: "R14-08(2011)",
    publisher: "IAPWS",
  },
  "iec-60038": {
    readAs: "reproduction",
    title: "IEC standard voltages",
    edition: "IEC 60038:2009",
    publisher: "IEC",
  },
  "iec-60228": {
    readAs: "reproduction",
    title: "Conductors of insulated cables",
    edition: "IEC 60228",
    publisher: "IEC",
  },
  "iec-60335-2-40-2013": {
    readAs: "reproduction",
    title:
      "Household appliances: safety, Part 2-40: heat pumps, air-conditioners and dehumidifiers",
    edition: "IEC 60335-2-40:2013+A1:2016 (edition 5.1)",
    publisher: "IEC",
  },
  "iec-60335-2-40-2018": {
    readAs: "reproduction",
    title:
      "Household appliances: safety, Part 2-40: heat pumps, air-conditioners and dehumidifiers",
    edition: "IEC 60335-2-40:2018 (edition 6)",
    publisher: "IEC",
  },
  "iec-60335-2-40-2022": {
    readAs: "memory",
    title:
      "Household appliances: safety, Part 2-40: heat pumps, air-conditioners and dehumidifiers",
    edition: "IEC 60335-2-40:2022 (edition 7)",
    publisher: "IEC",
  },
  "iec-60364-4-41": {
    readAs: "reproduction",
    title: "Low-voltage electrical installations, Part 4-41: protection against electric shock",
    edition: "IEC 60364-4-41:2005",
    publisher: "IEC",
  },
  "iec-60364-4-43": {
    readAs: "reproduction",
    title: "Low-voltage electrical installations, Part 4-43: protection against overcurrent",
    edition: "IEC 60364-4-43:2008",
    publisher: "IEC",
  },
  "iec-60364-5-52": {
    readAs: "reproduction",
    title: "Low-voltage electrical installations, Part 5-52: wiring systems",
    edition: "IEC 60364-5-52:2009",
    publisher: "IEC",
  },
  "iec-60364-5-54": {
    readAs: "reproduction",
    title:
      "Low-voltage electrical installations, Part 5-54: earthing arrangements and protective conductors",
    edition: "IEC 60364-5-54:2011",
    publisher: "IEC",
  },
  "iec-60898-1": {
    readAs: "reproduction",
    title: "Circuit-breakers for overcurrent protection for household installations",
    edition: "IEC 60898-1:2015",
    publisher: "IEC",
  },
  "iec-61000-4-30": {
    readAs: "memory",
    title: "Electromagnetic compatibility: power quality measurement methods",
    edition: "IEC 61000-4-30:2015",
    publisher: "IEC",
  },
  "iec-61010-2-033": {
    readAs: "memory",
    title: "Safety requirements for hand-held multimeters for mains voltage",
    edition: "IEC 61010-2-033:2019",
    publisher: "IEC",
  },
  "imc-2021": {
    readAs: "reproduction",
    title: "International Mechanical Code",
    edition: "2021",
    publisher: "International Code Council",
  },
  "ipc-2021": {
    readAs: "reproduction",
    title: "International Plumbing Code",
    edition: "2021",
    publisher: "International Code Council",
  },
  "ipcc-ar4": {
    readAs: "reproduction",
    title: "Climate Change 2007: The Physical Science Basis (AR4), table 2.14",
    edition: "2007",
    publisher: "IPCC",
  },
  "ipcc-ar5": {
    readAs: "reproduction",
    title: "Climate Change 2013: The Physical Science Basis (AR5), table 8.A.1",
    edition: "2013",
    publisher: "IPCC",
  },
  "ipcc-ar6": {
    readAs: "reproduction",
    title: "Climate Change 2021, The Physical Science Basis, chapter 7, supplementary material",
    edition: "AR6, 2021",
    publisher: "IPCC",
  },
  "iso-5149-2": {
    readAs: "memory",
    title: "Refrigerating systems and heat pumps: safety and environmental requirements, Part 2",
    edition: "ISO 5149-2:2014",
    publisher: "ISO",
  },
  "iso-80000": {
    readAs: "memory",
    title: "Quantities and units",
    edition: "ISO 80000-1:2022, 80000-4:2019, 80000-5:2019",
    publisher: "ISO",
  },
  "jacobs-1976": {
    readAs: "memory",
    title:
      "Oil entrainment by refrigerant vapors in suction and hot gas risers (Jacobs, M. L.; Scheidecker, F. A.; Elphick, S. M.)",
    edition: "1976",
    publisher: "ASHRAE Transactions 82(2)",
  },
  "japan-electricity-rules": {
    readAs: "reproduction",
    title: "Ordinance for Enforcement of the Electricity Business Act, article 38",
    edition: "2017",
    publisher: "Ministry of Economy, Trade and Industry, Japan",
  },
  "japan-interpretation": {
    readAs: "reproduction",
    title: "Interpretation of the Technical Standards for Electrical Facilities; JEAC 8001",
    edition: "articles 17 and 149; JEAC 8001, 1310-1",
    publisher: "Ministry of Economy, Trade and Industry, Japan; Japan Electric Association",
  },
  "jcgm-100-2008": {
    readAs: "memory",
    title: "Guide to the expression of uncertainty in measurement (GUM)",
    edition: "JCGM 100:2008",
    publisher: "BIPM",
    doi: "10.59161/JCGM100-2008E",
  },
  "jcgm-106-2012": {
    readAs: "memory",
    title: "The role of measurement uncertainty in conformity assessment",
    edition: "JCGM 106:2012",
    publisher: "BIPM",
    doi: "10.59161/JCGM106-2012",
  },
  "jis-h-3300": {
    readAs: "memory",
    title: "Copper and copper alloy seamless pipes and tubes",
    edition: "JIS H 3300",
    publisher: "JSA",
  },
  "json-schema-2020-12": {
    readAs: "reproduction",
    title: "JSON Schema (a media type for describing JSON documents, by its meta-schema)",
    edition: "draft 2020-12",
    publisher: "JSON Schema",
  },
  "kamei-1995": {
    readAs: "reproduction",
    title:
      "Application of Nonlinear Regression in the Development of a Wide Range Formulation for HCFC-22 (Kamei, A.; Beyerlein, S. W.; Jacobsen, R. T)",
    edition: "1995",
    publisher: "Int. J. Thermophys. 16, 1155-1164",
    doi: "10.1007/BF02081283",
  },
  "lemmon-2003": {
    readAs: "reproduction",
    title:
      "Pseudo-Pure Fluid Equations of State for the Refrigerant Blends R-410A, R-404A, R-507A, and R-407C (Lemmon, E. W.)",
    edition: "2003",
    publisher: "Int. J. Thermophys. 24, 991",
    doi: "10.1023/A:1025048800563",
  },
  "lemmon-akasaka-2022": {
    readAs: "reproduction",
    title:
      "Equation of State for the Thermodynamic Properties of 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf) (Lemmon, E. W.; Akasaka, R.)",
    edition: "2022",
    publisher: "Int. J. Thermophys. 43, 119",
    doi: "10.1007/s10765-022-03015-y",
  },
  "lemmon-jacobsen-2000": {
    readAs: "reproduction",
    title:
      "An International Standard Formulation for the Thermodynamic Properties of 1,1,1-Trifluoroethane (HFC-143a) for Temperatures From 161 to 450 K and Pressures to 50 MPa (Lemmon, E. W.; Jacobsen, R. T)",
    edition: "2000",
    publisher: "J. Phys. Chem. Ref. Data 29, 521-552",
    doi: "10.1063/1.1318909",
  },
  "lemmon-jacobsen-2004": {
    readAs: "reproduction",
    title:
      "Equations of State for Mixtures of R-32, R-125, R-134a, R-143a, and R-152a (Lemmon, E. W.; Jacobsen, R. T)",
    edition: "2004",
    publisher: "J. Phys. Chem. Ref. Data 33, 593-620",
    doi: "10.1063/1.1649997",
  },
  "lemmon-jacobsen-2005": {
    readAs: "reproduction",
    title:
      "A New Functional Form and New Fitting Techniques for Equations of State with Application to Pentafluoroethane (HFC-125) (Lemmon, E. W.; Jacobsen, R. T)",
    edition: "2005",
    publisher: "J. Phys. Chem. Ref. Data 34, 69-108",
    doi: "10.1063/1.1797813",
  },
  "lemmon-mclinden-wagner-2009": {
    readAs: "reproduction",
    title:
      "Thermodynamic Properties of Propane. III. A Reference Equation of State for Temperatures from the Melting Line to 650 K and Pressures up to 1000 MPa (Lemmon, E. W.; McLinden, M. O.; Wagner, W.)",
    edition: "2009",
    publisher: "J. Chem. Eng. Data 54, 3141-3180",
    doi: "10.1021/je900217v",
  },
  "manufacturer-manuals": {
    readAs: "reproduction",
    title: "Manufacturers' published installation manuals, brands withheld",
    edition: "",
    publisher: "",
  },
  "marsaglia-2004": {
    readAs: "memory",
    title: "Evaluating the Normal Distribution (Marsaglia, G.)",
    edition: "2004",
    publisher: "J. Stat. Softw. 11(4)",
    doi: "10.18637/jss.v011.i04",
  },
  "municipal-code": {
    readAs: "reproduction",
    title: "Mechanical code of a city, historic, on standing pressure tests",
    edition: "as published",
    publisher: "",
  },
  "nema-mg-1": {
    readAs: "reproduction",
    title: "Motors and Generators",
    edition: "NEMA MG 1",
    publisher: "NEMA",
  },
  "nfpa-70-2020": {
    readAs: "reproduction",
    title: "National Electrical Code",
    edition: "NFPA 70, 2020 edition",
    publisher: "NFPA",
  },
  "nfpa-70-2023": {
    readAs: "reproduction",
    title: "National Electrical Code",
    edition: "NFPA 70, 2023 edition",
    publisher: "NFPA",
  },
  "nfpa-70-2026": {
    readAs: "reproduction",
    title: "National Electrical Code",
    edition: "NFPA 70, 2026 edition",
    publisher: "NFPA",
  },
  "nist-dlmf": {
    readAs: "memory",
    title: "NIST Digital Library of Mathematical Functions",
    edition: "online",
    publisher: "NIST",
  },
  "nist-sp-811": {
    readAs: "memory",
    title: "Guide for the Use of the International System of Units",
    edition: "NIST SP 811 (2008)",
    publisher: "NIST",
    doi: "10.6028/NIST.SP.811e2008",
  },
  "nist-strd": {
    readAs: "reproduction",
    title: "Statistical Reference Datasets: linear and nonlinear regression",
    edition: "1999",
    publisher: "NIST",
    doi: "10.18434/T43G6C",
  },
  "rfc-8259": {
    readAs: "reproduction",
    title: "The JavaScript Object Notation (JSON) Data Interchange Format (Bray, T., ed.)",
    edition: "RFC 8259, STD 90 (2017)",
    publisher: "IETF",
  },
  "sae-j513": {
    readAs: "reproduction",
    title: "Refrigeration Tube Fittings: General Specifications",
    edition: "SAE J513",
    publisher: "SAE International",
  },
  "si-brochure": {
    readAs: "memory",
    title: "The International System of Units (SI)",
    edition: "9th edition (2019)",
    publisher: "BIPM",
  },
  "span-2000": {
    readAs: "reproduction",
    title:
      "A Reference Equation of State for the Thermodynamic Properties of Nitrogen (Span, R.; Lemmon, E. W.; Jacobsen, R. T.; Wagner, W.; Yokozeki, A.)",
    edition: "2000",
    publisher: "J. Phys. Chem. Ref. Data 29, 1361",
    doi: "10.1063/1.1349047",
  },
  "span-wagner-1996": {
    readAs: "reproduction",
    title:
      "A New Equation of State for Carbon Dioxide Covering the Fluid Region from the Triple Point Temperature to 1100 K at Pressures up to 800 MPa (Span, R.; Wagner, W.)",
    edition: "1996",
    publisher: "J. Phys. Chem. Ref. Data 25, 1509-1596",
    doi: "10.1063/1.555991",
  },
  "thol-lemmon-2016": {
    readAs: "reproduction",
    title:
      "Equation of State for the Thermodynamic Properties of trans-1,3,3,3-Tetrafluoropropene [R-1234ze(E)] (Thol, M.; Lemmon, E. W.)",
    edition: "2016",
    publisher: "Int. J. Thermophys. 37, 1-16",
    doi: "10.1007/s10765-016-2040-6",
  },
  "tillner-roth-1997": {
    readAs: "reproduction",
    title:
      "An international standard equation of state for difluoromethane (R-32) (Tillner-Roth, R.; Yokozeki, A.)",
    edition: "1997",
    publisher: "J. Phys. Chem. Ref. Data 26, 1273",
    doi: "10.1063/1.556002",
  },
  "tillner-roth-baehr-1994": {
    readAs: "reproduction",
    title:
      "An International Standard Formulation for the Thermodynamic Properties of 1,1,1,2-Tetrafluoroethane (HFC-134a) for Temperatures from 170 K to 455 K and Pressures up to 70 MPa (Tillner-Roth, R.; Baehr, H. D.)",
    edition: "1994",
    publisher: "J. Phys. Chem. Ref. Data 23, 657-729",
    doi: "10.1063/1.555958",
  },
  "ufgs-15182": {
    readAs: "reproduction",
    title: "Unified Facilities Guide Specification: refrigerant piping (15182, 15652A)",
    edition: "as published",
    publisher: "U.S. Department of Defense",
  },
  "ufgs-15217n": {
    readAs: "reproduction",
    title: "Unified Facilities Guide Specification 15217N: compressed gas systems",
    edition: "as published",
    publisher: "U.S. Department of Defense",
  },
  "ufgs-15730n": {
    readAs: "reproduction",
    title: "Unified Facilities Guide Specification 15730N: unitary air conditioning equipment",
    edition: "as published",
    publisher: "U.S. Department of Defense",
  },
  "ufgs-15741n": {
    readAs: "reproduction",
    title: "Unified Facilities Guide Specification 15741N: refrigerant piping and equipment",
    edition: "as published",
    publisher: "U.S. Department of Defense",
  },
  "ul-1995": {
    readAs: "reproduction",
    title: "Heating and Cooling Equipment, clauses 37.14 and 37.15",
    edition: "UL 1995 / CSA C22.2 No. 236, 4th edition",
    publisher: "UL, CSA Group",
  },
  "ul-60335-2-40-2019": {
    readAs: "memory",
    title: "Household and Similar Electrical Appliances, Safety, Part 2-40",
    edition: "UL 60335-2-40, 3rd edition, 2019",
    publisher: "UL",
  },
  "ul-60335-2-40-2022": {
    readAs: "memory",
    title: "Household and Similar Electrical Appliances, Safety, Part 2-40",
    edition: "UL 60335-2-40, 4th edition, 2022",
    publisher: "UL",
  },
  umc: {
    readAs: "reproduction",
    title: "Uniform Mechanical Code, as quoted in a field checklist",
    edition: "as published",
    publisher: "IAPMO",
  },
  "upc-2021": {
    readAs: "reproduction",
    title: "Uniform Plumbing Code",
    edition: "2021",
    publisher: "IAPMO",
  },
  "us-standard-atmosphere-1976": {
    readAs: "memory",
    title: "U.S. Standard Atmosphere, 1976",
    edition: "NOAA-S/T 76-1562",
    publisher: "NOAA, NASA, USAF",
  },
  "vacuum-handbook": {
    readAs: "reproduction",
    title:
      "Vacuum technology know-how books and leak-testing handbooks of instrument makers, brands withheld",
    edition: "",
    publisher: "",
  },
  "wagner-pruss-2002": {
    readAs: "memory",
    title:
      "The IAPWS Formulation 1995 for the Thermodynamic Properties of Ordinary Water Substance (Wagner, W.; Pruss, A.)",
    edition: "2002",
    publisher: "J. Phys. Chem. Ref. Data 31, 387",
    doi: "10.1063/1.1461829",
  },
} as const;

/**
 * The bibliography: every work that a verdict or a doc comment cites, by its id.
 *
 * Source: the works themselves.
 *
 * @example
 * ```ts
 * import { bibliography } from "hvac-install-math/sources";
 *
 * bibliography["jcgm-106-2012"].edition; // => JCGM 106:2012
 * ```
 */
export const bibliography: typeof works = /* @__PURE__ */ frozenInPlace(works);

/** The id of a work in the {@link bibliography}. */
export type SourceId = keyof typeof bibliography;

/**
 * A work of the bibliography by its id, as a citation names it.
 *
 * @param id - An id of the bibliography.
 * @returns The work.
 * @throws {@link InvalidInputError} from JavaScript, when the id is not in the bibliography.
 *
 * @example
 * ```ts
 * import { sourceById } from "hvac-install-math/sources";
 *
 * sourceById("span-2000").doi; // => 10.1063/1.1349047
 * ```
 */
export function sourceById(id: SourceId): Source {
  if (Object.hasOwn(bibliography, id)) return bibliography[id];
  return refuse("id", id, "an id of bibliography");
}

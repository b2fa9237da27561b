// The app's own words; all others are the library's. A missing word does not compile.

const english = {
  title: "Job sheet",
  invented:
    "Example. The unit, its nameplate and its manual are invented; use none of its figures.",
  language: "Language",
  units: "Units",
  plan: "Plan",
  nitrogen: "Nitrogen",
  vacuum: "Vacuum",
  report: "Report",
  unit: "Unit of",
  notPossible: "Not possible here:",
  start: "When the gas has settled",
  end: "After the hold",
  nameplate: "Nameplate (invented)",
  gauge: "Simulated gauge",
  gaugeNote: "No gauge is connected. The readings are made up, 100 times as fast as a clock.",
  tight: "Tight and dry",
  leak: "Leak",
  moisture: "Moisture",
  stop: "Stop",
  readings: "readings kept",
  minutes: "min",
  open: "Write the report",
  save: "Save as a file",
  again: "Start a new job",
  unreadable: "The stored job cannot be read by this version. It was left as it is.",
};

/** The app's words in one language. */
export type Words = { readonly [Name in keyof typeof english]: string };

const spanish: Words = {
  title: "Hoja de trabajo",
  invented:
    "Ejemplo. El equipo, su placa y su manual son inventados; no use ninguna de sus cifras.",
  language: "Idioma",
  units: "Unidades",
  plan: "Plan",
  nitrogen: "Nitrógeno",
  vacuum: "Vacío",
  report: "Informe",
  unit: "Unidad de",
  notPossible: "No es posible aquí:",
  start: "Cuando el gas se ha estabilizado",
  end: "Después de la espera",
  nameplate: "Placa (inventada)",
  gauge: "Vacuómetro simulado",
  gaugeNote:
    "No hay ningún vacuómetro conectado. Las lecturas son inventadas, 100 veces más rápidas que un reloj.",
  tight: "Estanco y seco",
  leak: "Fuga",
  moisture: "Humedad",
  stop: "Parar",
  readings: "lecturas guardadas",
  minutes: "min",
  open: "Escribir el informe",
  save: "Guardar como archivo",
  again: "Empezar otro trabajo",
  unreadable: "Esta versión no puede leer el trabajo guardado. Se dejó como está.",
};

const french: Words = {
  title: "Fiche de chantier",
  invented:
    "Exemple. L’appareil, sa plaque et son manuel sont inventés ; n’utilisez aucun de ses chiffres.",
  language: "Langue",
  units: "Unités",
  plan: "Plan",
  nitrogen: "Azote",
  vacuum: "Vide",
  report: "Rapport",
  unit: "Unité de",
  notPossible: "Impossible ici :",
  start: "Quand le gaz s’est stabilisé",
  end: "Après l’attente",
  nameplate: "Plaque (inventée)",
  gauge: "Vacuomètre simulé",
  gaugeNote:
    "Aucun vacuomètre n’est raccordé. Les mesures sont inventées, 100 fois plus vite qu’une horloge.",
  tight: "Étanche et sec",
  leak: "Fuite",
  moisture: "Humidité",
  stop: "Arrêter",
  readings: "mesures gardées",
  minutes: "min",
  open: "Écrire le rapport",
  save: "Enregistrer le fichier",
  again: "Commencer un autre chantier",
  unreadable: "Cette version ne peut pas lire le chantier enregistré. Il est resté tel quel.",
};

export const words = { en: english, es: spanish, fr: french } as const;

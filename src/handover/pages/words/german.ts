// The fixed words of our pages in German.
import type { PageWords } from './english';

export const GERMAN: PageWords = {
  sheets: {
    cover: 'Deckblatt',
    measured: 'Merkmale',
    figure: 'Bild',
    variants: 'Variantentabelle',
    cautions: 'Hinweise',
    calculated: 'Berechnet',
    conversion: 'Umsetzung',
    sources: 'Quellen',
  },
  forScreen: sheet => `${sheet}: für den Bildschirm, nicht zum Drucken`,
  of: 'von',
  row: 'Zeile',
  cover: {
    title: 'Übergabe',
    uncontrolled: 'gedruckt nicht gelenkt',
    revision: 'Revision',
    what:
      'Die Maße eines Formteils zur Durchsicht. Hellblaue Felder sind für Ihre Antworten. Wird ein Eingabewert auf seinem Blatt ' +
      'geändert, folgt alles, was davon abhängt.',
    asked: [
      'Beantworten Sie die offenen Fragen unten.',
      'Messen Sie, was unter Merkmale steht; notieren Sie, was sich nicht halten lässt.',
      'Unterschreiben Sie unten und senden Sie die Datei oder einen Scan zurück.',
    ],
    titleBlock: 'Schriftfeld',
    part: 'Teil',
    number: 'Teilenummer',
    date: 'Datum',
    status: 'Stand',
    madeBy: 'erstellt',
    checkedBy: 'geprüft',
    supplier: 'Lieferant',
    drawing: 'Zeichnung und Modell',
    family: 'Werkstofffamilie',
    grade: 'Type',
    along: 'Schwindung längs, %',
    across: 'Schwindung quer, %',
    colour: 'Farbe, Zusätze',
    flame: 'Brandklasse',
    questionsTitle: 'Offene Fragen',
    question: 'Frage',
    answer: 'Antwort des Lieferanten',
    decided: 'Stand',
    decidedWords: 'offen, vereinbart oder abgelehnt',
    open: 'offen',
    decisions: ['offen', 'vereinbart', 'abgelehnt'],
    questions: [
      'Schwindung der Type längs und quer zum Fließen, und ihre Streuung?',
      'Welche Flächen liegen zur Trennebene, und reichen die Schrägen?',
      'Anguss, Auswerfer und Kühlung der Kernstifte nahe den Domen: ist etwas zu verlegen?',
      'Einfall an den Wurzeln von Domen und Rippen: was ist auf der Sichtfläche zu erwarten?',
      'Welche Grenzen der Merkmale lassen sich nicht halten, und welche stattdessen?',
      'Welche Maße sollen stahlsicher bleiben, um nach den ersten Schüssen nachzuarbeiten?',
    ],
    toCorrect: (count, sheets) =>
      `${count} ${count === 1 ? 'Zelle ließ' : 'Zellen ließen'} sich nicht berechnen (${sheets}): der Absender berichtigt oder lässt weg`,
    signTitle: 'Freigabe durch den Lieferanten',
    name: 'Name',
    review: 'Ergebnis',
    reviews: ['geprüft, machbar', 'geprüft, machbar mit Änderungen', 'nicht machbar'],
    changesAsked: 'gewünschte Änderungen',
    onPaper: 'auf Papier',
    onScreen: 'am Bildschirm',
  },
  measured: {
    title: 'Merkmale',
    note: of => `${of}. C: die Toleranz zählt in der Rechnung. Leere Grenzen: Allgemeintoleranz nach Vereinbarung.`,
    none: 'Aus dieser Arbeitsmappe folgt kein Maß, das am Teil gemessen werden kann.',
    left: (count, sheet) => `${count} weitere Maße ließen sich messen; sie stehen auf dem Blatt ${sheet}.`,
    cavity: 'Kavität, Muster',
    headers: ['Nr.', 'Merkmal', 'Maß', 'min', 'max', '', 'Verfahren', '1', '2', '3', '4', '5', 'i.O.', 'Notiz'],
    methods: {
      'pin gauge': 'Prüfstift',
      calliper: 'Schieblehre',
      'depth gauge': 'Tiefenmaß',
      'coordinate measuring': 'Koordinaten',
      'section cut': 'Schnitt',
    },
    otherMethods: ['Lehrdorn', 'Höhenmaß', 'optisch', 'Tomografie', 'vereinbart'],
    methodWords: 'Messverfahren',
    ok: 'i.O.',
    notOk: 'n.i.O.',
    noLimits: 'ohne Grenze',
    noNumber: 'keine Zahl',
  },
  figure: {
    title: 'Bilder: die Verbindung im Schnitt, und was an ihr untersucht wurde',
    note: day => `Die Bilder zeigen die Verbindung, wie sie ${day} war. Nummern in Kreisen sind die der Merkmale.`,
    inputs: 'Eingaben',
    asDrawn: 'wie gezeichnet',
    studyDescribed: (study, place, day) => `${study}, gezeichnet aus den Eingaben von ${place}, wie sie ${day} waren.`,
    atHandOver: 'bei der Übergabe',
    on: 'am',
    state: 'Zustand',
    described: (label, day, state) =>
      `Schnitt durch die Verbindung „${label}“ im Maßstab, wie sie ${day} war, Zustand damals: ${state}. ` +
      'Die Nummern sind die der Merkmale.',
  },
  variants: {
    title: 'Varianten: die gewählte, und warum die anderen nicht',
    note: 'Das Teil wird nach der gewählten Variante gebaut. Zustand und Gründe folgen den Eingaben.',
    headers: ['Variante', 'gewählt', 'Zustand', 'Gründe, der schwerste zuerst'],
    chosen: 'gewählt',
    left: (count, sheet) => `${count} weitere: siehe das Blatt ${sheet}.`,
  },
  calculated: {
    title: 'Berechnete Werte, nicht zu messen',
    note: 'Sie folgen den Blättern. Zustände, Festigkeiten und Verhältnisse sind keine Forderungen an ein Teil.',
    headers: ['Wert', 'wo', 'ist', 'Einheit'],
    left: count => `${count} weitere Werte stehen auf den Blättern selbst.`,
  },
  conversion: {
    title: 'Umsetzung: was aus den Funktionen wurde',
    live: (live, asValues) =>
      `${live} Werte folgen ihren Eingaben, ${asValues} sind feste Werte. Ein fester Wert ist in seiner Zelle kenntlich (kursiv ` +
      'auf hellem Grund) und hat unten eine Zeile; wo sich seine Eingaben beobachten lassen, zeigt er "inputs changed", sobald sie ' +
      'andere sind.',
    workbook: 'Arbeitsmappe',
    functions: 'Funktionen',
    data: 'Daten der Normen',
    content: 'Inhalt',
    contentWords: hash => `${hash} (FNV-1a, 64 Bit, über alle Eingaben und Formeln bei der Übergabe)`,
    liveOn: (sheet, count) => `${sheet}: ${count} Werte folgen.`,
    headers: ['Blatt', 'Zelle', 'was', 'warum'],
    more: count => `… und ${count} weitere`,
  },
  cautions: {
    title: 'Regeln, Annahmen, Hinweise',
    rulesTitle: 'Einheiten und Regeln',
    rules: [
      'Längen in mm, Winkel in Grad, Kräfte in N, Drehmomente in N·m, Spannungen in MPa, wo nichts anderes steht.',
      'Schrägen gelten je Seite. Ein schräges Element hat sein Maß an dem Ende, das sein Name nennt: ein Dom am freien Ende, ein ' +
        'Kernloch, wo „pilot held at“ es sagt, eine Senkung am Grund. Das andere Ende folgt aus der Schräge.',
      'Schräge innerhalb oder außerhalb der Toleranz, Tolerierungsgrundsatz und Allgemeintoleranz sind vor dem Werkzeugbau zu vereinbaren.',
      'Maße sind die des Teils, nicht der Kavität. Wann und in welchem Zustand gemessen wird, ist zu vereinbaren.',
      'Auf den zugefügten Blättern sind Formeln gegen Versehen gesperrt, ohne Kennwort.',
    ],
    assumptionsTitle: 'Annahmen',
    assumptions: [
      'Normen liegen aus zweiter Hand oder aus dem Gedächtnis vor, wie es bei jeder Tabelle auf dem ' +
        'Datenblatt steht; maßgeblich ist die Norm.',
      'Toleranzen gelten im ungünstigsten Fall, wo nichts anderes steht. Die quadratische Summe nimmt sie als unabhängig an, was Maße ' +
        'eines Werkzeugs nicht sind.',
      'Werkstoffwerte gelten für eine Familie, nicht für eine Type, Farbe oder Charge.',
      'Festigkeiten und Drehmomente sind Kurzzeitschätzungen ohne Bindenähte, Alterung, Klima und Kriechen.',
    ],
    cautionsTitle: 'Hinweise',
    cautions: [
      'Eine Hilfe zum Auslegen für Fachleute. Sie ersetzt weder Ingenieur noch Ihre Durchsicht; jede ' +
        'Verbindung ist zu bauen und zu prüfen.',
      'Nahe Netz- oder anderer gefährlicher Spannung: elektrische Abstände stehen hier nicht. Sie folgen aus der zutreffenden Norm und ' +
        'werden von Fachleuten geprüft.',
      'Batterien, Lasten, Heben, Druck, Fahrzeuge, Medizin, Kinder und Lebensgefahr sind nicht abgedeckt.',
      'Leer heißt nicht geprüft, nie bestanden. Werte gelten für Eingaben, Versionen und Quellen dieser Datei.',
      'Wer dies weitergibt, achtet darauf, dass nichts darin steht, was im Haus bleiben muss.',
    ],
  },
};

// The fixed words of the sheets that a hand-over adds, in German.
import type { PageWords } from './english';
import { GERMAN_COMPARE } from './german-compare';
import { GERMAN_FINDINGS } from './german-findings';
import { GERMAN_SOURCES } from './german-sources';
import { GERMAN_STEPS } from './german-steps';

export const GERMAN: PageWords = {
  compare: GERMAN_COMPARE,
  sheets: {
    cover: 'Deckblatt',
    measured: 'Merkmale',
    figure: 'Bild',
    variants: 'Variantentabelle',
    cautions: 'Hinweise',
    calculated: 'Berechnet',
    conversion: 'Umsetzung',
    sources: 'Quellen',
    steps: 'Schritte',
    stepRows: 'Schritte_Zeilen',
    variantSteps: 'Varianten',
    tables: 'Tabellen',
    outside: 'Ausserhalb',
    data: 'Daten',
  },
  page: 'Seite',
  handOver: 'Übergabe',
  number: 'Nr.',
  forScreen: sheet => `${sheet}: für den Bildschirm, nicht zum Drucken`,
  of: 'von',
  row: 'Zeile',
  cover: {
    title: 'Übergabe',
    uncontrolled: 'Ausdruck unterliegt nicht der Lenkung',
    revision: 'Revision',
    what:
      'Die Maße eines Formteils zur Durchsicht. Hellblaue Felder sind für Ihre Antworten. Wird ein Eingabewert auf seinem Blatt ' +
      'geändert, folgt alles, was davon abhängt.',
    asked: [
      'Beantworten Sie die offenen Fragen unten.',
      'Messen Sie, was unter Merkmale steht; notieren Sie, welche Grenzen sich nicht halten lassen.',
      'Unterschreiben Sie unten und senden Sie die Datei oder einen Scan zurück.',
    ],
    titleBlock: 'Schriftfeld',
    part: 'Teil',
    number: 'Teilenummer',
    date: 'Datum',
    status: 'Stand',
    statuses: { 'for quotation': 'zur Anfrage', 'for tooling': 'zum Werkzeugbau', 'for information': 'zur Information' },
    madeBy: 'erstellt',
    checkedBy: 'geprüft',
    supplier: 'Lieferant',
    drawing: 'Zeichnung und Modell',
    family: 'Werkstofffamilie',
    grade: 'Werkstofftype',
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
      'Schwindung der Werkstofftype längs und quer zur Fließrichtung, und ihre Streuung?',
      'Welche Flächen liegen zur Trennebene, und reichen die Entformungsschrägen?',
      'Anguss, Auswerfer und Kühlung der Kernstifte nahe den Domen: ist etwas zu verlegen?',
      'Einfallstellen an Dom- und Rippenfuß: was ist auf der Sichtfläche zu erwarten?',
      'Welche Grenzmaße der Merkmale lassen sich nicht halten, welche stattdessen?',
      'Welche Maße sollen stahlsicher ausgeführt werden, zur Korrektur nach der Erstbemusterung?',
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
    note: of => `${of}. C: die Toleranz geht in die Rechnung ein. Leere Grenzmaße: Allgemeintoleranz nach Vereinbarung.`,
    none: 'Aus dieser Arbeitsmappe folgt kein Maß, das am Teil gemessen werden kann.',
    left: (count, sheet) => `${count} weitere Maße ließen sich messen; sie stehen auf dem Blatt ${sheet}.`,
    cavity: 'Kavität, Teil',
    headers: ['Nr.', 'Merkmal', 'Nennmaß', 'min.', 'max.', 'Einh.', 'Prüfmittel', '1', '2', '3', '4', '5', 'i.O.?', 'Bemerkung'],
    methods: {
      'pin gauge': 'Prüfstift',
      calliper: 'Messschieber',
      'depth gauge': 'Tiefenmesser',
      'coordinate measuring': 'KMG',
      'section cut': 'Schliffbild',
    },
    otherMethods: ['Lehrdorn', 'Höhenmesser', 'optisch', 'CT', 'vereinbart'],
    methodWords: 'Prüfmittel oder Verfahren',
    ok: 'i.O.',
    notOk: 'n.i.O.',
    noLimits: 'ohne Grenzmaß',
    noNumber: 'keine Zahl',
  },
  outside: {
    title: 'Außerhalb der Zellen: was Namen, Bedingungen und Gültigkeitsregeln aufriefen',
    headers: ['wo', 'Aufruf', 'Wert'],
  },
  figure: {
    title: 'Bilder der Verbindung und ihrer Studien',
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
    left: (count, sheet) => `Nicht in dieser Tabelle: ${count}, siehe ${sheet}.`,
  },
  calculated: {
    title: 'Berechnete Werte, nicht zu messen',
    note: 'Sie folgen den Blättern. Zustände, Festigkeiten und Verhältnisse sind keine Forderungen an ein Teil.',
    headers: ['Wert', 'wo', 'ist', 'Einheit'],
    state: 'Zustand',
    left: count => `${count} weitere Werte stehen auf den Blättern selbst.`,
  },
  conversion: {
    title: 'Umsetzung: was aus den Funktionen wurde',
    live: (live, asValues) =>
      `${live} Werte folgen ihren Eingaben, ${asValues} sind feste Werte. Ein fester Wert ist in seiner Zelle kenntlich (kursiv ` +
      'auf hellem Grund) und hat unten eine Zeile; wo sich seine Eingaben beobachten lassen, zeigt er "inputs changed" (Eingaben ' +
      'geändert), sobald sie andere sind.',
    workbook: 'Arbeitsmappe',
    functions: 'Funktionen',
    data: 'Daten der Normen',
    content: 'Inhalt',
    contentWords: hash => `${hash} (FNV-1a, 64 Bit, über alle Eingaben und Formeln bei der Übergabe)`,
    liveOn: (sheet, count) => `${sheet}: ${count} Werte folgen.`,
    headers: ['Blatt', 'Zelle', 'was', 'warum'],
    kinds: {
      'value, not live': 'fester Wert',
      'not in every program': 'nicht in jedem Programm',
      'another add-in': 'anderes Add-in',
      'not worked out here': 'hier nicht berechnet',
      error: 'Fehler',
      changed: 'geändert',
    },
    more: count => `… und ${count} weitere`,
    said: GERMAN_FINDINGS,
  },
  steps: {
    title: 'Schritte: wie jeder Wert berechnet wird',
    note: 'Einfache Formeln auf den Zellen der anderen Blätter. Wird dort ein Eingabewert geändert, folgt jede Zeile.',
    headers: ['Wert', 'Einheit', 'in Worten', 'Quelle'],
    said: GERMAN_STEPS,
  },
  stepRows: {
    title: 'Schritte in Zeilen: wie jeder Wert einer gefüllten Spalte berechnet wird',
    note:
      'Je Spalte eine Tabelle, je Zelle eine Zeile, je Schritt eine Spalte. Wird ein Eingabewert auf seinem Blatt geändert, folgt ' +
      'jede Zeile.',
    cell: 'Zelle',
    to: 'bis',
    lines: ['Einheit', 'in Worten', 'Quelle', 'für alle Zeilen'],
  },
  variantSteps: {
    title: 'Varianten, Schritt für Schritt',
    from: cell => `aus ${cell}`,
    andOthers: cell => `${cell} und anderen`,
    note: 'Je Variante eine Zeile, je Schritt eine Spalte; die Eingaben sind die Zellen jenes Blatts. Dort sind sie zu ändern.',
    variant: 'Variante',
    how: 'wie es berechnet wird',
  },
  tables: {
    title: 'Tabellen: Aufrufe, die mehrere Zeilen geben',
    note: 'Je Zeile eine Zeile, je Schritt eine Spalte. Die Eingaben sind die Zellen der anderen Blätter. Dort sind sie zu ändern.',
  },
  data: {
    title: 'Daten: Tabellen der Normen, die auf den anderen Blättern gelesen werden',
    choices: of => `Auswahl: ${of}`,
    edition: edition => `Ausgabe ${edition}; Längen in mm`,
    row: 'Zeile',
    held: 'wie es vorliegt',
    said: GERMAN_SOURCES,
  },
  sources: {
    title: 'Quellen',
    note: (functions, data) => `Funktionen der Version ${functions}, Daten vom ${data}. Maßgeblich sind die Norm selbst und die Zeichnung.`,
    headers: ['', 'was es gibt oder enthält', 'Art oder Ausgabe', 'Quelle', 'wie es vorliegt', 'Hinweis'],
    functions: 'Funktionen',
    rules: 'Regeln der Verbindung',
    rule: 'Regel',
    tables: 'Tabellen auf dem Blatt Daten',
    said: GERMAN_SOURCES,
  },
  cautions: {
    title: 'Regeln, Annahmen, Hinweise',
    rulesTitle: 'Einheiten und Regeln',
    rules: [
      'Längen in mm, Winkel in Grad, Kräfte in N, Drehmomente in N·m, Spannungen in MPa, wo nichts anderes steht.',
      'Entformungsschrägen gelten je Seite. Das Maß eines Elements mit Entformungsschräge gilt an einem Ende: ' +
        'beim Schraubdom am freien Ende, beim Kernloch, wo „pilot held at“ es sagt, bei der Senkung am Grund. ' +
        'Das andere Ende folgt aus der Entformungsschräge.',
      'Entformungsschräge innerhalb oder außerhalb der Toleranz, Tolerierungsgrundsatz und Allgemeintoleranz sind vor dem Werkzeugbau zu ' +
        'vereinbaren.',
      'Maße sind die des Teils, nicht der Kavität. Wann und in welchem Zustand gemessen wird, ist zu vereinbaren.',
      'Auf den zugefügten Blättern sind Formeln gegen Versehen gesperrt, ohne Kennwort.',
    ],
    assumptionsTitle: 'Annahmen',
    assumptions: [
      'Normen liegen aus zweiter Hand oder aus dem Gedächtnis vor, wie es bei jeder Tabelle auf dem ' +
        'Blatt Daten steht; maßgeblich ist die Norm.',
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
      'Prüfen Sie vor dem Weitergeben, dass nichts Vertrauliches in der Datei steht.',
    ],
  },
};

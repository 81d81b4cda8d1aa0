// What the view of sheets says, in German.
import type { GuideName } from '../../demo/guides';
import type { SHEETS as ENGLISH } from '../sheets';

/** By the name of the sheet. */
const READY: Readonly<Record<string, string>> = {
  Joint: 'Eine Verbindung, Schritt für Schritt',
  Variants: 'Schrauben nebeneinander',
  Strength: 'Festigkeit und Drehmoment: Schätzungen',
  Tolerance: 'Eine Maßkette: der Spalt am Rand',
  Checks: 'Prüfungen: Regel, Wert, Grenze, Abhilfe',
  Screw: 'Was über eine Schraube vorliegt',
};

const GUIDES: Readonly<Record<GuideName, { readonly title: string; readonly sentence: string }>> = {
  empty: {
    title: 'Leere Arbeitsmappe',
    sentence: 'Ein leeres Blatt: Geben Sie Ihre Formeln ein, oder lassen Sie die Ansicht Tabelle eine Variantentabelle schreiben.',
  },
  joint: {
    title: 'Einzelne Verbindung',
    sentence: 'Eine Schraubverbindung vom Kopf bis zur Spitze, mit allen Prüfungen: Überschreiben Sie die blauen Zellen mit Ihren Werten.',
  },
  variants: {
    title: 'Variantentabelle',
    sentence: 'Je Variante eine Zeile, nebeneinander, mit Zustand und Grund: Überschreiben Sie die blauen Zellen mit Ihren Werten.',
  },
  stack: {
    title: 'Maßkette',
    sentence: 'Ungünstigster Fall und quadratische Summe einer Kette: Überschreiben Sie die blauen Zellen mit Ihren Werten.',
  },
  logger: {
    title: 'Feuchtelogger im Gewächshaus: die wirkliche Einschraubtiefe',
    sentence:
      'Eine Schraube mit 3 d unter der Leiterplatte trägt im ungünstigsten Fall mit der Hälfte davon; die nächste Länge hält, die ' +
      'übernächste setzt auf, und Entformungsschräge, Senkung und Einfall folgen.',
  },
  hive: {
    title: 'Anzeige einer Bienenstockwaage: keine lieferbare Länge passt',
    sentence:
      'Keine lieferbare Länge der ersten Schraube hält, ohne aufzusetzen, und ihr Dom zeichnet sich vorn ab; bei einer dünneren ' +
      'tritt beides nicht auf, und sechs davon halten mehr als vier dicke.',
  },
  timer: {
    title: 'Treppenlichtschalter: ein Schraubenkopf neben Kupfer',
    sentence:
      'Ein Schraubenkopf kommt, um sein Spiel verschoben, stromführendem Kupfer zu nah; das Kupfer zu verlegen erhält die starke ' +
      'Schraube. Den Abstand geben Sie vor, aus Ihrer Norm und geprüft.',
  },
  gauge: {
    title: 'Füllstandsanzeige einer Regentonne: ein hoher Dom neben einer Wand',
    sentence:
      'Die Entformungsschräge schließt den Spalt neben einem hohen Dom, bis das Werkzeug am Grund eine Messerkante hat; am Deckel ' +
      'hängend hat ein kurzer Dom Platz, ein kurzes Loch und eine passende Schraube.',
  },
  monitor: {
    title: 'Luftgütemesser im Klassenzimmer: Lippe, Klemmung und eine Zeichnung in Zoll',
    sentence:
      'Ein Lippenspalt, der sauber aussieht, streift im ungünstigsten Fall, und eine zwischen zwei Hälften geklemmte Leiterplatte wird ' +
      'gequetscht oder klappert; ein weiterer Spalt und verschraubte Dome lösen beides.',
  },
  hatch: {
    title: 'Frostwarner im Obstgarten: eine Klappe, die oft geöffnet wird',
    sentence:
      'Eine Blechschraube hält, aber nicht für eine Klappe, die jeden Monat geöffnet wird; ein Gewindeeinsatz tut es, sobald das ' +
      'Loch in der Klappe so eng ist, dass die Schraube ihn nicht mehr herauszieht.',
  },
  handheld: {
    title: 'Handmessgerät für Boden: eine mit dem Messschieber gemessene Schraube',
    sentence:
      'Eine gewindeformende Schraube ohne Norm wird eingegeben, wie sie gemessen wurde; ihre erste Länge hält zu wenig Gewinde, die ' +
      'längste setzt auf, und in der Ecke ist der Werkzeugstahl zu dünn.',
  },
  pond: {
    title: 'Pegelsender im Teich: vier Löcher, ein Haken und eine Dichtung',
    sentence:
      'Knappe kleine Löcher gehen nicht über vier Schrauben, ein kurzer Haken wird zu stark gedehnt, und ein Rand öffnet sich ' +
      'zwischen seinen ' +
      'Schrauben; jedes davon behebt ein einziges Maß.',
  },
  compost: {
    title: 'Kompostthermometer: die Mitte des Fensters',
    sentence:
      'Einfall, Restwand und Einschraubtiefe lassen einen kleinen guten Bereich von Wand und Dom; eine Wahl an seinem Rand ' +
      'scheitert, sobald ' +
      'der Spritzgießer weniger genau fertigt, eine in seiner Mitte nicht.',
  },
};

export const SHEETS: typeof ENGLISH = {
  heading: 'Blätter',
  noWorkbook: 'Hier ist keine Arbeitsmappe. Öffnen Sie diesen Bereich in einer Arbeitsmappe, um Blätter einzufügen.',
  about: host =>
    `Jedes kommt mit den Werten eines Beispiels: Überschreiben Sie die blauen Zellen mit Ihren. In ${host} wird nichts überschrieben; ` +
    'ein Name, den es schon gibt, bekommt eine Nummer.',
  insert: 'Einfügen',
  insertOf: name => `Einfügen: ${name}`,
  isIn: name => `${name} ist in der Arbeitsmappe`,
  isRenamed: (name, taken) => `${name} ist in der Arbeitsmappe: Den Namen ${taken} gab es schon`,
  ready: (name, title) => READY[name] ?? title,
  guides: 'Beispiele',
  guidesWords: 'Erfundene Fälle, durchgerechnet: Die erste Wahl scheitert, eine andere besteht, und warum.',
  guide: ({ name }) => GUIDES[name],
  inserted: 'Von hier eingefügt',
  remove: 'Entfernen',
  removeOf: name => `Entfernen: ${name}`,
  removeAsked: name =>
    `Das Blatt ${name} mit allem, was darauf steht, entfernen? Formeln anderswo, die es lesen, zeigen dann #BEZUG! (#REF!).`,
  removeYes: 'Blatt entfernen',
  removed: name => `${name} ist entfernt`,
};

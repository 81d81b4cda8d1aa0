// The words of the help pages' own frame, in German.
import { ABOUT } from '../../words/german/about';
import { FUNCTIONS } from '../../words/german/functions';
import type { HelpWords } from './english';

export const GERMAN: HelpWords = {
  language: 'Deutsch',
  titled: title => `${title} – Bosswright-Hilfe`,
  help: 'Bosswright-Hilfe',
  whereYouAre: 'Wo Sie sind',
  inDecimals: 'Formeln mit Dezimalkomma',
  aid: 'Eine Auslegungshilfe für Fachleute: Bauen und prüfen Sie einen Prototyp.',
  allCautions: 'Alle Hinweise',
  topics: FUNCTIONS.topics,
  about: {
    Units:
      'Jede Länge und jeder Winkel darf als Text mit Einheit eingegeben werden, und Summen dürfen Einheiten mischen. Was nicht lesbar ' +
      'ist, wird abgelehnt; geraten wird nichts.',
    'Screws and standard data':
      'Gewinde, Kopf, Länge und Spitze einer Schraube aus den Tabellen der Normen, jeder Wert mit Ausgabe und Herkunft, oder aus dem ' +
      'Text einer eigenen Schraube; dazu Anfangswerte für Kunststoffe.',
    'Holes and core pins':
      'Kernlöcher und Durchgangslöcher, was die Entformungsschräge aus ihnen macht, wie tief ein Sackloch sein muss und was der ' +
      'Kernstift aushält, der sie formt.',
    Draft:
      'Die Entformungsschräge gilt je Seite, beginnt an dem Ende, an dem das Maß gehalten ist, und hat eine Richtung. Jedes Maß mit ' +
      'Entformungsschräge hat zwei Enden: Sehen Sie beide an.',
    'Boss and wall':
      'Der Dom, der das Gewinde aufnimmt: Außendurchmesser, Wanddicke an beiden Enden, und wie er auf die Wand dahinter und das ' +
      'Werkzeug daneben wirkt.',
    'Head recess':
      'Die Senkung für den Kopf in der Außenfläche: am Grund weit genug für den größten Kopf, tief genug, um ihn zu verbergen, und mit ' +
      'genug Kunststoff darunter.',
    'Grip, engagement, screw length':
      'Was zwischen Kopf und Dom liegt, ist Klemmlänge; nicht alles darunter ist tragendes Gewinde. Entlastungsbohrung, Spitze und ' +
      'Toleranzen nehmen ihren Teil, bevor etwas greift.',
    'Strength (estimates)': 'Schätzungen, um Varianten zu vergleichen und Versuche zu planen. Jede braucht einen Versuch mit dem Formteil.',
    'Board and supports':
      'Die Leiterplatte: Spiel ringsum, was sie klemmt, was das Metall der Schraube erreicht, und was sie hält, wenn sie sich verschiebt.',
    'Inserts and nuts':
      'Gewindeeinsätze nach den Maßen ihrer eigenen Zeichnung und Taschen für Sechskantmuttern: was sie vom Dom brauchen und was sie ' +
      'hält. Schätzungen; Einbau und Ausdrehmoment werden nicht berechnet: Erproben Sie beides.',
    'Snap hooks (estimates)':
      'Ein Haken statt einer Schraube: ein gerader Kragbalken, der sich vom Fuß zur Spitze verjüngt, seine größte Dehnung, wie weit ' +
      'und mit welcher Kraft er sich biegt, und was seine Fügeschräge aus dieser Kraft macht. Schätzungen; die zulässige Dehnung kommt ' +
      'aus den Daten des Kunststoffs.',
    'Pattern of holes':
      'Mehrere Schrauben oder Stifte in einer Leiterplatte: wie lang ein Langloch neben einem runden Loch sein muss, wie weit sich die ' +
      'Leiterplatte drehen kann, und ob eine starre Leiterplatte über alle Dome passt. Durchgebogene Leiterplatten und Verzug des ' +
      'Gehäuses sind nicht erfasst.',
    'Ribs, lip, mould':
      'Rippen und Wandanschlüsse, die Lippe zwischen den Hälften, ob Rand oder Dom zuerst aufliegt, wie weit sich der Rand zwischen den ' +
      'Schrauben öffnet, eine Dichtung in ihrer Nut, Kühlzeit und Kavitätsmaß.',
    Tolerances: 'Toleranzen aus Tabellen und Maßketten: ungünstigster Fall, quadratische Summe, und was dazwischen liegt.',
    'Checks, variants, trace':
      'Ein Wert an seiner Grenze gemessen, Varianten nebeneinander, und Funktionen, die andere Funktionen erklären.',
    'The joint as one table':
      'Die ganze Verbindung in einem Aufruf: eine Zeile je Variante, Eingaben nach Namen, jeder Wert einmal berechnet, jede Regel mit ' +
      'ihrer Begründung beurteilt.',
  },

  heading: FUNCTIONS.heading,
  lead:
    'Zellfunktionen für die Schraubverbindungen zweiteiliger Spritzgussgehäuse. Jede Funktion hat eine Seite mit Formel, Argumenten, ' +
    'Beispiel, Quellen und dem, woran sie geprüft wurde.',
  find: 'Suchen nach Name, Fachwort oder Frage',
  such: 'Schraubdom, Kernstift, welches Kernloch …',
  topicsLabel: 'Themen',
  readOn: 'Weiterlesen (auf Englisch)',
  library: 'Die Bibliothek, Name für Name',
  before: ABOUT.before,
  cautions: ABOUT.cautions,

  formula: 'Formel',
  arguments: 'Argumente und Formelzeichen',
  noArgument: 'Diese Funktion hat keine Argumente.',
  oneOf: 'Eines von',
  also: 'Auch',
  none: 'Auch "none" (keine Grenze).',
  and: 'und',
  blank: {
    refused: 'muss angegeben sein',
    zero: 'leer: 0',
    explicit: 'eine Null mit Einheit schreiben',
    absent: 'darf fehlen',
    by: value => `leer: ${value}`,
    as: argument => `leer: wie ${argument}`,
    from: argument => `leer: aus ${argument}`,
  },
  screw: {
    sizes: 'Maße der Schraube, mm, aus der Gewindetabelle ihrer Norm:',
    d: 'Nenndurchmesser',
    d1: 'Außendurchmesser, größter',
    d2: 'Kerndurchmesser, größter',
    P: 'Steigung',
    own: 'Eine eigene Schraube ist ein Text mit ihren Zahlen, größte/kleinste:',
    ownRest:
      'Das letzte Wort ist forming (gewindeformend), cutting (gewindeschneidend) oder machine (Maschinengewinde); ein Senkkopf hat ' +
      'einen Kopfwinkel (head angle). Was fehlt, hat keinen Wert.',
  },
  nut: { size: 'Maß der Mutter, mm, aus ISO 4032:', s: 'Schlüsselweite, größte' },
  example: 'Beispiel',
  gives: 'ergibt',
  result: 'Ergebnis',
  firstOf: (rows, columns) => `Der Anfang von ${rows} Zeilen und ${columns} Spalten.`,
  readIn: 'Gelesen in',
  figures: {
    demo: 'Die Verbindung der Beispiel-Arbeitsmappe',
    hatch: 'Die Verbindung des Beispiels hatch',
    exampleOf: id => `Das Beispiel von ${id}`,
    corner:
      'Ein Dom in einer gerundeten Ecke, maßstäblich: dicke Linien am Grund, dünne am freien Ende, gestrichelt bei konstantem Eckradius',
    hook: 'Ein angenommener Haken, 5 mm breit, E-Modul 2300 MPa, Reibungszahl 0,3; ausgelenkt gestrichelt',
    pattern: 'Eine Leiterplatte auf einem runden Loch und einem Langloch, und zwei weitere Schrauben; nicht maßstäblich',
  },
  inBold: 'Fett: was diese Funktion berechnet.',
  mistakes: 'Häufige Fehler',
  more: topic => `Mehr zu: ${topic}`,
  sources: 'Quellen',
  kind: 'Art',
  kinds: FUNCTIONS.kinds,
  plain: {
    heading: 'Wie ein Lieferant es bekommt',
    remark: 'In der Übergabekopie eines Blatts:',
    words: 'Die Übergabekopie eines Blatts mit diesem Beispiel: gewöhnliche Formeln, die jedes Tabellenprogramm liest.',
    formulas: 'Gewöhnliche Formeln',
    columns: ['Zelle', 'was', 'Formel', 'Wert'],
  },
  related: {
    heading: 'Verwandte Funktionen',
    worksOut: 'In der Verbindung berechnet sie',
    isPartOf: 'In der Verbindung ist sie ein Teil von',
    rule: name => `Regel „${name}“:`,
    uses: 'Ihre Formel verwendet',
    usedBy: 'Sie steht in der Formel von',
    takes: 'In der Verbindung nimmt sie von',
    gives: 'In der Verbindung gibt sie an',
    sameTopic: 'Zum selben Thema',
  },
  evidence: {
    heading: 'Nachweis',
    none: 'Eine Prüfung von außen ist nicht bekannt: Die Werte sind von Hand oder rechnerisch ermittelt oder folgen aus einer Identität.',
  },
  joint: {
    inputs: 'Eingaben',
    inputHeads: ['Name', 'Einheit', 'Standardwert', 'Bedeutung'],
    outputs: 'Ausgaben',
    outputHeads: ['Name', 'Einheit', 'Bedeutung'],
    rules: 'Regeln, und was Abhilfe schafft',
    ruleHeads: ['Regel', 'wenn sie verletzt ist', 'beurteilt', 'Quelle', 'Abhilfen ändern'],
    with: ' mit ',
  },
};

// What the view About says, in German.
import type { ABOUT as ENGLISH } from '../about';

export const ABOUT: typeof ENGLISH = {
  heading: 'Info',
  what:
    'Zellfunktionen für die Schraubverbindungen zweiteiliger Spritzgussgehäuse: von Schraube, Wand und Leiterplatte zu Dom, Kernstift, ' +
    'Kopfsenkung, Entformungsschräge und Schraubenlänge, mit Toleranzen, Prüfungen und der Quelle jedes Werts.',
  noWorkbook: 'Hier ist keine Arbeitsmappe.',
  seeAll: 'Geben Sie =ENCL. in eine Zelle ein, um alle Funktionen zu sehen.',
  before: 'Bevor Sie sich auf eine Zahl verlassen',
  cautions: [
    [
      'Eine Auslegungshilfe für Fachleute.',
      'Sie bescheinigt nichts und ersetzt weder eine Ingenieurin oder einen Ingenieur noch die Durchsicht des Spritzgießers, eine ' +
        'Prüfung oder das Recht am Ort des Verkaufs. Bauen und prüfen Sie von jeder Verbindung einen Prototyp; eine Festigkeit ist eine ' +
        'Schätzung und sagt es.',
    ],
    [
      'Netzspannung oder andere gefährliche Spannung:',
      'Isolierungen, Kriech- und Luftstrecken werden hier nie angegeben. Tragen Sie die der Norm ein, die für das Produkt gilt, und ' +
        'lassen Sie sie prüfen. Metallschrauben durch die Wand, Feuchte, Schmutz, Höhenlage und Fehler werden nicht beurteilt. Die ' +
        'Installation folgt den örtlichen Vorschriften und gehört in die Hand von Elektrofachkräften.',
    ],
    [
      'Batterien:',
      'Aufblähen, Wärme, Entgasung und Verformungsraum werden nicht berechnet. Halten Sie die längste Schraubenspitze von jeder ' +
        'Zelle fern. Knopfzellen unterliegen vielerorts Vorschriften zum Schutz von Kindern: Besorgen Sie sich den geltenden ' +
        'Text, und ziehen Sie eine Prüfstelle hinzu.',
    ],
    [
      'Nicht abgedeckt:',
      'Lasten, von denen Menschen abhängen, Heben, Teile über Kopf oder an Fahrzeugen, Druck. Kunststoffe kriechen, altern und reißen um ' +
        'Schrauben; eine kurzzeitige Auszugskraft ist keine zulässige Last.',
    ],
    [
      'Nicht beurteilt:',
      'Medizinprodukte, Lebensmittelkontakt, Produkte für Kinder, explosionsfähige Atmosphären, Brennbarkeitsklassen und Schutzarten. ' +
        'Lose Schrauben und Kleinteile sind eine Gefahr für Kinder.',
    ],
    [
      'Werkstoffdaten',
      'sind typisch für eine Familie von Kunststoffen. Fragen Sie den Lieferanten nach der Type. Wärme, Kälte, Feuchte, Sonnenlicht, Öl, ' +
        'Pflege- und Reinigungsmittel ändern Passungen und Drehmomente oder lassen Teile reißen.',
    ],
    ['Bei der Montage', 'begrenzen Sie das Drehmoment und schützen Sie die Augen.'],
    ['Ein Ergebnis gilt', 'für die Einheiten, Quellen und die Version daneben. Eine leere Eingabe heißt: nicht geprüft.'],
    ['', 'Nichts davon ist Rechtsberatung; örtliches Recht und Vorschriften gehen vor.'],
  ],
  bench: 'Die Funktionen auf der Tabellenseite ausprobieren, ohne Tabellenprogramm (neues Fenster)',
};

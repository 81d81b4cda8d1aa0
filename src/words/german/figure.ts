// What the view of figures says, in German.
import type { FIGURE as ENGLISH } from '../figure';

export const FIGURE: typeof ENGLISH = {
  letters: 'Buchstaben der Zeichnung',
  enlarge: 'Vergrößern',
  close: 'Schließen',
  put: 'Auf das Blatt setzen',
  isPut: (sheet, at) => `Das Bild steht auf ${sheet} bei ${at}`,
  inches: 'Zoll in Klammern',
  onDrawing: 'Namen in der Zeichnung',
  section: joint => `Schnitt durch ${joint}`,
  allVariants: variants => `Alle ${variants} Varianten`,
  variantsRead: variants => `Die ${variants} Varianten, die um diese gelesen wurden`,
  stack: 'Maßkette',
  links: links => (links === 1 ? '1 Glied' : `${links} Glieder`),
  shares: place => `Anteil jedes Glieds der Maßkette in ${place}`,
  totals: 'Schließmaß der Maßkette',
  nominal: 'Nennmaß',
  worst: 'ungünstigster Fall',
  rootSumSquare: 'quadratische Summe',
  ofVariance: 'Die Anteile sind die an der Varianz; die Glieder gelten als unabhängig.',
  study: 'Studie',
  studyOf: (study, place) => `${study}, aus ${place}`,
  saveAs: 'Speichern als',
  kinds: { svg: 'SVG', dxf: 'DXF', csv: 'Parameter, CSV', json: 'Parameter, JSON' },
  saving: kind => `Speichern als ${kind}`,
  saved: name => `Gespeichert als ${name}`,
};

// What stands over the columns of the standards' tables, in German: each name once, symbols as they are printed.
import type { ColumnName, ColumnNote } from './english';

export const COLUMN_NAMES: Readonly<Record<ColumnName, string>> = {
  '#0 to #12': '#0 bis #12',
  '1/4 to 3/4': '1/4 bis 3/4',
  'ISO 261 and ISO 262:1998': 'ISO 261 und ISO 262:1998',
  'ISO 68-1 and ISO 724': 'ISO 68-1 und ISO 724',
  actual: 'tatsächlich',
  'as ISO 965': 'wie ISO 965',
  'basic major diameter': 'Nennmaß des Außendurchmessers',
  'basic minor diameter': 'Nennmaß des Kerndurchmessers',
  'basic pitch diameter': 'Nennmaß des Flankendurchmessers',
  class: 'Klasse',
  'clearance hole': 'Durchgangsloch',
  'close fit': 'enge Passung',
  coarse: 'grob',
  'coarse pitch': 'Regelgewinde, Steigung',
  cone: 'Spitze',
  'core diameter': 'Kerndurchmesser',
  'countersink depth': 'Senktiefe',
  'countersink diameter': 'Senkdurchmesser',
  designation: 'Bezeichnung',
  'design form': 'Konstruktionsform',
  'deviation of the length': 'Abmaß der Länge',
  'diameter of the flat end': 'Durchmesser des stumpfen Endes',
  fine: 'fein',
  'flank angle': 'Teilflankenwinkel',
  flat: 'stumpf',
  'flat root': 'flacher Gewindegrund',
  'half the thread angle': 'halber Gewindewinkel',
  'head angle': 'Kopfwinkel',
  'head diameter': 'Kopfdurchmesser',
  'head height': 'Kopfhöhe',
  height: 'Höhe',
  'height of the raised part': 'Linsenhöhe',
  'internal thread': 'Innengewinde',
  'knurled head': 'gerändelter Kopf',
  length: 'Länge',
  'length of incomplete thread': 'Länge des unvollständigen Gewindes',
  'length of the point taper': 'Länge der kegeligen Spitze',
  'length without full thread': 'Länge ohne volles Gewinde',
  'loose fit': 'weite Passung',
  'lower deviation of the length': 'unteres Abmaß der Länge',
  'major diameter': 'Außendurchmesser',
  medium: 'mittel',
  'metric drill': 'metrischer Bohrer',
  'minor diameter': 'Kerndurchmesser',
  'nominal length': 'Nennlänge',
  'nominal length over': 'Nennlänge über',
  'nominal length up to': 'Nennlänge bis',
  'nominal size over': 'Nennmaß über',
  'nominal size up to': 'Nennmaß bis',
  'normal fit': 'normale Passung',
  'not tied to one tool part': 'nicht werkzeuggebunden',
  pitch: 'Steigung',
  'pitch diameter': 'Flankendurchmesser',
  'plain head': 'glatter Kopf',
  'point diameter': 'Durchmesser der Spitze',
  'radius of the raised part': 'Linsenradius',
  'raised part included': 'einschließlich Linse',
  reference: 'Hilfsmaß',
  'root diameter': 'Kerndurchmesser',
  'rounded root': 'gerundeter Gewindegrund',
  series: 'Reihe',
  'side height': 'Höhe des zylindrischen Teils',
  'standard tolerance grade': 'Grundtoleranzgrad',
  'tensile stress area': 'Spannungsquerschnitt',
  theoretical: 'theoretisch',
  'threads per inch': 'Gänge je Zoll',
  'through hole': 'Durchgangsloch',
  'tied to one tool part': 'werkzeuggebunden',
  'total head height': 'gesamte Kopfhöhe',
  type: 'Typ',
  'upper deviation of the length': 'oberes Abmaß der Länge',
  'upper limit': 'oberes Grenzmaß',
  'very coarse': 'sehr grob',
  'width across corners': 'Eckenmaß',
  'width across flats': 'Schlüsselweite',
  'without the raised part': 'ohne Linse',
};

export const COLUMN_NOTES: Readonly<Record<ColumnNote, string>> = {
  'Recomputed from the formulas of ASME B1.1; agrees within 0.0001 in.':
    'Nachgerechnet nach den Formeln von ASME B1.1; stimmt auf 0.0001 in überein.',
  'The same expression gives the six values that were read, within 0.0001 in.':
    'Derselbe Ausdruck gibt die sechs gelesenen Werte, auf 0.0001 in.',
  'Charts of older tap drills carry this number too (#6 0.144 / 0.150); not used.':
    'Auch Tafeln älterer Kernlochbohrer tragen diese Nummer (#6 0.144 / 0.150); nicht benutzt.',
  'The minimum agrees with the named drills (#1 No. 43 … 1/4 9/32), which were read.':
    'Das Kleinstmaß stimmt mit den genannten Bohrern (#1 No. 43 … 1/4 9/32) überein, die gelesen wurden.',
  'Column order rebuilt from running text.': 'Reihenfolge der Spalten aus fortlaufendem Text wiederhergestellt.',
  'For the cone; the visible edge is dkMax. H max belongs here: (A − D)/(2·tan 40°) gives it within 0.001 in.':
    'Für den Kegel; die sichtbare Kante ist dkMax. H max. gehört hierher: (A − D)/(2·tan 40°) gibt es auf 0.001 in.',
  'An older edition has 0.147 (#2), 0.195 (#4), 0.244 (#6), 0.34 (#10).':
    'Eine ältere Ausgabe hat 0.147 (#2), 0.195 (#4), 0.244 (#6), 0.34 (#10).',
  'The copy prints the minus side only.': 'Die Abschrift druckt nur die Minusseite.',
  'A copy says only that lengths run in steps of 1/16 in.': 'Eine Abschrift sagt nur, dass die Längen in Stufen von 1/16 in gehen.',
  'Read for slotted heads.': 'Für Köpfe mit Schlitz gelesen.',
  'A slotted pan head is lower; a square recess (type III) head is taller for #3 to #10.':
    'Ein Flachkopf mit Schlitz ist niedriger; ein Kopf mit Innenvierkant (Typ III) ist für #3 bis #10 höher.',
  'An earlier edition; the standard keeps round heads only as not for new design.':
    'Eine frühere Ausgabe; die Norm führt Halbrundköpfe nur noch als nicht für Neukonstruktionen.',
  'One copy calls this row TG2; its ten figures are those of TG6. Equal to W moved one band up.':
    'Eine Abschrift nennt diese Zeile TG2; ihre zehn Zahlen sind die von TG6. Gleich W, um einen Bereich nach oben verschoben.',
  'A less 0.1 in every band.': 'A minus 0.1 in jedem Bereich.',
  'Countersink angle 80° ± 1°.': 'Senkwinkel 80° ± 1°.',
  'ISO 7049 differs: 4 for ST2.2, 7 for ST3.5, 8 for ST4.2.': 'ISO 7049 weicht ab: 4 für ST2.2, 7 für ST3.5, 8 für ST4.2.',
  'ISO 7049 differs: 1.6 / 2.4 / 2.6 / 3.1 / 3.7 for ST2.2 / ST2.9 / ST3.5 / ST4.2 / ST4.8.':
    'ISO 7049 weicht ab: 1.6 / 2.4 / 2.6 / 3.1 / 3.7 für ST2.2 / ST2.9 / ST3.5 / ST4.2 / ST4.8.',
  'Smaller than ISO 10642 (M3 theoretical 6.72): the two do not fit the same countersink.':
    'Kleiner als ISO 10642 (M3 theoretisch 6.72): beide passen nicht in dieselbe Senkung.',
  'Read under ISO 7047 and DIN 7991. ISO 7050 and ISO 7051 have the same 90°: (dk − d)/2 = k.':
    'Gelesen unter ISO 7047 und DIN 7991. ISO 7050 und ISO 7051 haben dieselben 90°: (dk − d)/2 = k.',
  'The copy gives the countersink as 80° ± 1°. ISO 7050 heads are 90°, not 80°.':
    'Die Abschrift gibt die Senkung mit 80° ± 1° an. Köpfe nach ISO 7050 haben 90°, nicht 80°.',
  'Larger than DIN 7991 (M3 max 6): the two do not fit the same countersink.':
    'Größer als DIN 7991 (M3 max. 6): beide passen nicht in dieselbe Senkung.',
  'Two older tables print 5.82 / 7.78 / 9.78 / 11.73.': 'Zwei ältere Tabellen drucken 5.82 / 7.78 / 9.78 / 11.73.',
  'DIN 7991 has 1.7 for M3.': 'DIN 7991 hat 1.7 für M3.',
  'The older DIN 84 head has 1 / 1.3 / 1.6 for M1.6 / M2 / M2.5.': 'Der ältere Kopf nach DIN 84 hat 1 / 1.3 / 1.6 für M1.6 / M2 / M2.5.',
  'That ISO 14585 uses the head of ISO 7049 is from memory.': 'Dass ISO 14585 den Kopf von ISO 7049 hat, ist aus dem Gedächtnis.',
  'Rounded from 25.4 mm / threads per inch, e.g. ST2.9 25.4/24 = 1.058. One copy has 1.4 for ST3.9 (25.4/19 = 1.337).':
    'Gerundet aus 25.4 mm / Gänge je Zoll, z. B. ST2.9 25.4/24 = 1.058. Eine Abschrift hat 1.4 für ST3.9 (25.4/19 = 1.337).',
  'Not the nominal: ST2.2 is 2.24, ST4.2 is 4.22.': 'Nicht der Nennwert: ST2.2 ist 2.24, ST4.2 ist 4.22.',
  'Checked against the minor diameter minimum of ASME B18.6.3 types AB and B.':
    'Gegen das Kleinstmaß des Kerndurchmessers nach ASME B18.6.3, Typen AB und B, geprüft.',
  'Lower than the cross recessed ISO 7045 head of the same diameter.':
    'Niedriger als der Kopf mit Kreuzschlitz nach ISO 7045 bei gleichem Durchmesser.',
  'That the two standards share the head form of ISO 7721 is from memory.':
    'Dass beide Normen die Kopfform nach ISO 7721 haben, ist aus dem Gedächtnis.',
  'Equal to ISO 7047, where they were read; ISO 7046-2 prints 6.9 / 8 / 8.9 / 10.9 for M3.5 / M4 / M5 / M6.':
    'Gleich ISO 7047, wo sie gelesen wurden; ISO 7046-2 druckt 6.9 / 8 / 8.9 / 10.9 für M3.5 / M4 / M5 / M6.',
  'The first band contains 0.5 mm itself (from memory).': 'Der erste Bereich schließt 0.5 mm selbst ein (aus dem Gedächtnis).',
  'Two copies print 0.15 / 0.2 in the first two bands; these belong to the older DIN 7168.':
    'Zwei Abschriften drucken 0.15 / 0.2 in den ersten beiden Bereichen; diese gehören zur älteren DIN 7168.',
  'Full width. Above 315 mm from memory, within 3 % of the formula.':
    'Volle Breite. Über 315 mm aus dem Gedächtnis, auf 3 % wie nach der Formel.',
  'IT14 and wider are not meant for sizes up to 1 mm (from memory).':
    'IT14 und gröber sind nicht für Maße bis 1 mm gedacht (aus dem Gedächtnis).',
  'Equal to 10 × IT10, the rule that every fifth grade is ten times wider.':
    'Gleich 10 × IT10, nach der Regel, dass jeder fünfte Grad zehnmal so breit ist.',
  'Equal to 10 × IT11, the rule that every fifth grade is ten times wider.':
    'Gleich 10 × IT11, nach der Regel, dass jeder fünfte Grad zehnmal so breit ist.',
  'one further copy rounds m of M5 and M6 to the values of another edition, 4.0 and 5.0; not followed':
    'eine weitere Abschrift rundet m von M5 und M6 auf die Werte einer anderen Ausgabe, 4.0 und 5.0; nicht übernommen',
  'Read as limits of size; the deviation is limit less nominal.': 'Als Grenzmaße gelesen; das Abmaß ist Grenzmaß minus Nennmaß.',
  'The maximum that a recess must clear.': 'Das Größtmaß, das eine Senkung aufnehmen muss.',
  'The copies include DIN 912 and GB/T 2671.2 tables, which share this head.':
    'Unter den Abschriften sind Tabellen zu DIN 912 und GB/T 2671.2, die denselben Kopf haben.',
  'An older national table has 5.2 / 6.64 / 8.14 / 9.64 for M3 / M4 / M5 / M6.':
    'Eine ältere nationale Tabelle hat 5.2 / 6.64 / 8.14 / 9.64 für M3 / M4 / M5 / M6.',
  'The older DIN 7985 head is wider (M3 6, M5 10) and is at times listed under this number.':
    'Der ältere Kopf nach DIN 7985 ist breiter (M3 6, M5 10) und wird mitunter unter dieser Nummer geführt.',
  'DIN 7985 (M3 2.52, M5 3.95) and slotted ISO 1580 (M3 1.8) are at times listed under this number.':
    'DIN 7985 (M3 2.52, M5 3.95) und ISO 1580 mit Schlitz (M3 1.8) werden mitunter unter dieser Nummer geführt.',
  'Read in the 1990 edition only; ISO 7047 prints 6.94 / 8.04 / 8.94 / 10.87 for M3.5 / M4 / M5 / M6.':
    'Nur in der Ausgabe von 1990 gelesen; ISO 7047 druckt 6.94 / 8.04 / 8.94 / 10.87 für M3.5 / M4 / M5 / M6.',
  'ISO 7046-2 prints 6.9 / 8 / 8.9 / 10.9 for M3.5 / M4 / M5 / M6.': 'ISO 7046-2 druckt 6.9 / 8 / 8.9 / 10.9 für M3.5 / M4 / M5 / M6.',
  'DIN 7981 has 4.2 for ST2.2, 6.9 for ST3.5, 8.2 for ST4.2, and is at times listed under this number.':
    'DIN 7981 hat 4.2 für ST2.2, 6.9 für ST3.5, 8.2 für ST4.2 und wird mitunter unter dieser Nummer geführt.',
  'DIN 7981 differs: 1.8 / 2.2 / 2.6 / 3.05 / 3.55.': 'DIN 7981 weicht ab: 1.8 / 2.2 / 2.6 / 3.05 / 3.55.',
  'ISO 7049 begins at ST2.2 × 4.5.': 'ISO 7049 beginnt bei ST2.2 × 4.5.',
  'That ISO 7050 shares the countersunk part of ISO 7051 is from memory.':
    'Dass ISO 7050 den Senkteil des Kopfes mit ISO 7051 gemeinsam hat, ist aus dem Gedächtnis.',
  'Later editions have 6.94 / 8.04 / 8.94 for ST3.5 / ST4.2 / ST4.8 (from memory).':
    'Spätere Ausgaben haben 6.94 / 8.04 / 8.94 für ST3.5 / ST4.2 / ST4.8 (aus dem Gedächtnis).',
  'ASME B18.3.4M has 1.43 for M3.': 'ASME B18.3.4M hat 1.43 für M3.',
  'Read in the length lists of ISO 1207, ISO 7046-2 and ISO 7380.': 'In den Längenlisten von ISO 1207, ISO 7046-2 und ISO 7380 gelesen.',
  'Recomputed as d − 0.649519·P.': 'Nachgerechnet als d − 0.649519·P.',
  'Recomputed as d − 1.082532·P.': 'Nachgerechnet als d − 1.082532·P.',
  'Recomputed as d − 1.226869·P.': 'Nachgerechnet als d − 1.226869·P.',
};

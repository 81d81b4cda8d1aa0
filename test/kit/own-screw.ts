// ST2.9 with a pan head once more, typed as an own screw: ISO 1478 (d1, d2, P, y of the cone), ISO 7049 (dk, k, lengths to 19 mm, ±0.8).
export const OWN_ST29 =
  'major 2.9/2.76; root 2.18/2.08; pitch 1.1; point 2.6; flank 30; head diameter 5.6/5.3; head height 2.4/2.15; ' +
  'lengths 4.5 6.5 9.5 13 16 19; length tolerance 0.8; forming';

/** The same number by number, in any order and in other units. */
export const OWN_ST29_OTHERWISE =
  'Lengths 0.45 0.65 0.95 1.3 1.6 1.9 cm ;forming; point 0.0026 m; flank 30°; pitch 1,1 mm; head height 2.4 mm / 2150 µm; ' +
  'length tolerance +0.8/-0.8; head diameter 5.6/5.3 mm; root 2.18/2.08; major 2.9 / 2.76';

/** The screw of the contract. */
export const OF_THE_CONTRACT =
  'major 3.0/2.9; root 2.1/2.0; pitch 1.34; point 2; flank 15; head diameter 5.6/5.3; head height 2.4/2.2; lengths 8 10 12 16; ' +
  'length tolerance 0.5; forming';

/** M3 with an ISO 7045 pan head: 6g of ISO 965-2, flat root ASME B1.13M, two pitches without thread, js15 of 6 to 10 mm. Its d is 2.98. */
export const OWN_M3 =
  'major 2.98/2.874; root 2.438/2.272; pitch 0.5; point 1; head diameter 5.6/5.3; head height 2.4/2.26; lengths 8 10; ' +
  'length tolerance 0.29; machine';

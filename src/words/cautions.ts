// What nobody should expect of a number: shown in the pane and on the help pages.

export const CAUTIONS: readonly (readonly [head: string, text: string])[] = [
  [
    'A sizing aid for trained people.',
    'It certifies nothing and does not stand in for a qualified engineer, the moulder’s review, a test, or the law ' +
      'of the place of sale. Make and test a prototype of every joint; a strength is an estimate and says so.',
  ],
  [
    'Mains or another dangerous voltage:',
    'insulation, creepage and clearance distances are never supplied here. Enter those of the standard that applies ' +
      'to the product and have them reviewed. Metal screws through the wall, moisture, dirt, altitude and faults are ' +
      'not judged. Installation follows the local electrical code and belongs to licensed electricians.',
  ],
  [
    'Batteries:',
    'swelling, heat, venting and crush space are not modelled. Keep the longest screw tip clear of every cell. ' +
      'Button and coin cells fall under child-access rules in many places: get the current text and a test house.',
  ],
  [
    'Not covered:',
    'loads that people depend on, lifting, overhead or vehicle parts, pressure. Plastics creep, age and crack around ' +
      'screws; a short-term pull-out force is not a design load.',
  ],
  [
    'Not judged:',
    'medical, food-contact or children’s products, explosive atmospheres, flame and ingress ratings. Loose screws ' +
      'and small parts are a hazard to children.',
  ],
  [
    'Material data',
    'are typical of a family of plastics. Ask the supplier about the grade. Heat, cold, damp, sunlight, oil, lotions ' +
      'and cleaners change fits and torques or crack parts.',
  ],
  ['At assembly,', 'control the torque and protect the eyes.'],
  ['A result holds', 'for the units, sources and version beside it. A blank input means not checked.'],
  ['', 'None of this is legal advice; local law and codes come first.'],
];

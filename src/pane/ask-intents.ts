// What a question may ask for: a function, the words for it in English and German, and what fills its arguments.

/** What a question may name. */
export type AskedKind = 'size' | 'material' | 'head' | 'length' | 'angle' | 'share' | 'fit' | 'grade' | 'group';

export interface Intent {
  readonly id: string;
  /** English and German; all words of one must be there. */
  readonly phrases: readonly string[];
  /**
   * In the order of the arguments: what fills each, the first that was named; behind `?` it may be left out. A text stands for itself;
   * a screw with its head is one argument.
   */
  readonly args: readonly (readonly AskedKind[] | `?${AskedKind}` | { readonly is: string } | 'screw and head')[];
}

/** The words of its name ask for a function too. */
const intent = (id: string, args: Intent['args'], ...phrases: readonly string[]): Intent => ({
  id,
  phrases: [...new Set([id.toLowerCase().split('.').join(' '), ...phrases])],
  args,
});

const property = (quantity: string, ...phrases: readonly string[]): Intent => ({
  id: 'MATERIAL',
  phrases: [quantity, ...phrases],
  args: [['material'], { is: quantity }],
});

export const INTENTS: readonly Intent[] = [
  intent(
    'HOLE.PILOT',
    [['size'], ['share', 'material']],
    'pilot',
    'pilot diameter',
    'core hole',
    'kernloch',
    'vorbohrung',
    'kernbohrung',
    'kernlochdurchmesser',
  ),
  intent('HOLE.CLEARANCE', [['size'], '?fit'], 'clearance hole diameter', 'through hole', 'durchgangsloch', 'durchgangsbohrung'),
  intent('HOLE.RELIEF', [['size']], 'relief', 'relief diameter', 'counterbore', 'freisenkung', 'freisenkung durchmesser'),
  intent('HOLE.THREAD.SHARE', [['size'], ['length']], 'thread share', 'share thread', 'thread depth share', 'gewindeanteil'),
  intent('HOLE.FLOATING', [['size'], ['length']], 'floating fastener', 'floating hole zone'),
  intent(
    'RECESS.DIAMETER',
    ['screw and head', ['length']],
    'recess',
    'recess allowance',
    'recess head',
    'kopfsenkung',
    'senkung',
    'senkungsdurchmesser',
  ),
  intent('RECESS.DEPTH.MIN', ['screw and head', ['length']], 'recess depth', 'recess depth subflush', 'senkungstiefe', 'senktiefe'),
  intent('SCREW.HEAD.DIAMETER', [['size'], ['head']], 'head diameter', 'kopfdurchmesser'),
  intent('SCREW.HEAD.HEIGHT', [['size'], ['head']], 'head height', 'kopfhöhe'),
  intent('SCREW.PITCH', [['size']], 'pitch', 'thread pitch', 'steigung', 'gewindesteigung'),
  intent('SCREW.ROOT', [['size']], 'root diameter', 'core diameter', 'minor diameter', 'kerndurchmesser'),
  intent('SCREW.MAJOR', [['size']], 'major diameter', 'thread diameter', 'aussendurchmesser', 'gewindedurchmesser'),
  intent('SCREW.POINT', [['size']], 'point length', 'spitzenlänge'),
  intent('SCREW.LENGTHS', [['size']], 'standard lengths', 'lengths', 'screw length', 'normlängen', 'schraubenlängen'),
  intent('SCREW.LENGTH.TOL', [['size'], ['length']], 'length tolerance', 'längentoleranz'),
  intent('ENGAGEMENT.RATIO', [['length'], ['size']], 'thread engagement ratio', 'thread engagement', 'engagement', 'einschraubtiefe'),
  intent(
    'BOSS.OD.RULE',
    [['size'], ['material']],
    'boss diameter',
    'boss outside diameter',
    'boss od',
    'boss',
    'domdurchmesser',
    'domaussendurchmesser',
  ),
  intent('INSERT.BOSS.OD', [['length']], 'insert boss', 'insert boss diameter', 'dom gewindeeinsatz', 'gewindeeinsatz domdurchmesser'),
  intent('NUT.POCKET', [['size']], 'nut trap', 'nut pocket width', 'across flats', 'mutterntasche', 'schlüsselweite'),
  intent('NUT.POCKET.CORNER', [['size']], 'across corners', 'eckenmass'),
  intent('NUT.HEIGHT', [['size']], 'nut thickness', 'mutternhöhe'),
  intent(
    'PULLOUT',
    [['size'], ['length'], ['material']],
    'pull-out',
    'pull-out force',
    'pullout force',
    'pull-out engagement',
    'strip force',
    'ausreisskraft',
    'auszugskraft',
  ),
  intent(
    'WALL.FEATURE',
    [['length'], '?share'],
    'rib',
    'rib thickness',
    'rib wall',
    'feature wall',
    'boss wall',
    'boss wall thickness',
    'rippe',
    'rippendicke',
    'rippenstärke',
    'domwand',
    'domwandstärke',
  ),
  intent('DRAFT.OFFSET', [['length'], ['angle']], 'draft', 'draft offset', 'entformungsversatz', 'entformungsschräge'),
  intent('DRAFT.TEXTURE', [['angle'], ['length']], 'texture draft', 'draft textured', 'entformungsschräge narbung'),
  intent('CAVITY.SIZE', [['length'], ['share', 'material']], 'cavity', 'mould cavity', 'formmass', 'kavität'),
  intent('TOL.IT', [['length'], ['grade']], 'tolerance', 'tolerance grade', 'standard tolerance', 'toleranz', 'grundtoleranz'),
  intent('TOL.GENERAL', [['length'], ['fit']], 'tolerance', 'general tolerance', 'toleranz', 'allgemeintoleranz'),
  intent('TOL.MOULDED', [['length'], ['group']], 'tolerance', 'moulded tolerance', 'moulding tolerance', 'toleranz', 'formteiltoleranz'),
  intent('LENGTH.MM', [['length']], 'convert', 'convert mm', 'millimetres', 'umrechnen', 'umrechnen mm', 'millimeter'),
  intent('DUAL', [['length']], 'inches', 'convert inches', 'mm inches', 'zoll', 'zoll umrechnen'),
  intent('ANGLE.DEG', [['angle']], 'convert angle', 'angle', 'winkel umrechnen'),
  property('shrinkage', 'mould shrinkage', 'schwindung'),
  property('density', 'dichte'),
  property('modulus', 'stiffness', 'young modulus', 'elastic modulus', 'e-modul', 'elastizitätsmodul'),
  property('strength', 'yield strength', 'yield stress', 'tensile strength', 'festigkeit', 'streckspannung', 'zugfestigkeit'),
  property('expansion', 'thermal expansion', 'wärmeausdehnung'),
  property('strain', 'allowable strain', 'dehnung', 'zulässige dehnung'),
  property('diffusivity', 'thermal diffusivity', 'temperaturleitfähigkeit'),
  property('melt', 'melt temperature', 'massetemperatur', 'schmelzetemperatur'),
  property('mould', 'mould temperature', 'werkzeugtemperatur'),
  property('eject', 'ejection temperature', 'entformungstemperatur'),
  property('sink limit', 'sink share', 'sink', 'einfallstellen'),
];

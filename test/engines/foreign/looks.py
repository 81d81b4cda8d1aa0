"""What a reader of workbooks that is not ours finds in pairs of files, an input and its copy: a line of JSON a pair.

The copy must have all that the input has; cells whose looks or content may change are named beside the pair.
"""
import json
import sys
import warnings
import zipfile
from openpyxl import load_workbook

warnings.simplefilter('ignore')
PAGE = ['orientation', 'paperSize', 'fitToHeight', 'fitToWidth', 'scale']


def letters(font):
    """Colour apart where it is that of any text; what a file need not say is left out."""
    colour = font.color and (font.color.rgb if font.color.type == 'rgb' else (font.color.type, font.color.theme, font.color.indexed))
    plain = colour is None or (font.color.type == 'theme' and font.color.theme == 1)
    return (font.name, font.sz, font.b, font.i, font.u, font.strike, font.vertAlign, None if plain else repr(colour))


def looks(cell, known):
    """In words, once for each format of a workbook."""
    key = tuple(cell._style)
    if key not in known:
        known[key] = {
            'format': cell.number_format, 'font': letters(cell.font), 'fill': repr(cell.fill), 'border': repr(cell.border),
            'alignment': repr(cell.alignment), 'protection': repr(cell.protection),
        }
    return known[key]


def rules(sheet):
    found = []
    for area in sheet.conditional_formatting:
        for rule in area.rules:
            found.append('condition %s %s %s' % (area.sqref, rule.type, rule.formula))
    for check in sheet.data_validations.dataValidation if sheet.data_validations else []:
        found.append('validation %s %s %s %s' % (check.sqref, check.type, check.formula1, check.formula2))
    return [rule for rule in found if 'ENCL' not in rule.upper()]


def facts(sheet):
    """Of a sheet, cells apart."""
    found = ['state %s' % sheet.sheet_state, 'pane %s' % sheet.freeze_panes, 'filter %s' % sheet.auto_filter.ref,
             'protected %s %s' % (sheet.protection.sheet, sheet.protection.password), 'print area %s' % sheet.print_area,
             'titles %s' % sheet.print_title_rows, 'right to left %s' % sheet.sheet_view.rightToLeft,
             'zoom %s' % sheet.sheet_view.zoomScale, 'tab %s' % (sheet.sheet_properties.tabColor and sheet.sheet_properties.tabColor.rgb)]
    found += ['page %s %s' % (key, getattr(sheet.page_setup, key)) for key in PAGE]
    for side in ['oddHeader', 'oddFooter']:
        found += ['%s %s %s' % (side, part, getattr(getattr(sheet, side), part).text) for part in ['left', 'center', 'right']]
    for name, column in sheet.column_dimensions.items():
        found.append('column %s %s %s %s %s' % (name, column.width, column.hidden, column.min, column.max))
    for name, row in sheet.row_dimensions.items():
        if row.height is not None or row.hidden or row.outlineLevel:
            found.append('row %s %s %s %s' % (name, row.height, row.hidden, row.outlineLevel))
    found += ['merged %s' % area for area in sheet.merged_cells.ranges]
    found += ['table %s %s' % (table.displayName, table.ref) for table in sheet.tables.values()]
    found += ['break %s' % one.id for one in sheet.row_breaks.brk]
    return found + rules(sheet) + ['charts %d' % len(sheet._charts), 'pictures %d' % len(sheet._images)]


def said(cell):
    """What goes with a cell."""
    remark, link = cell.comment, cell.hyperlink
    return ([] if remark is None else ['remark %s' % remark.text]) + ([] if link is None else ['link %s %s' % (link.target, link.location)])


def gone(fact, spared):
    return fact.startswith(tuple(spared['facts']))


def compared(before, after, spared):
    """Counts, and what differs."""
    counts, lost = {'cells': 0, 'contents': 0, 'facts': 0}, []
    mine_known, its_known = {}, {}
    one, two = load_workbook(before), load_workbook(after)
    for sheet in one.worksheets:
        if sheet.title in spared['sheets']:
            continue
        if sheet.title not in two.sheetnames:
            lost.append('sheet %s' % sheet.title)
            continue
        other = two[sheet.title]
        here, there = facts(sheet), set(facts(other))
        counts['facts'] += len(here)
        lost += ['%s: %s' % (sheet.title, fact) for fact in here if fact not in there and not gone(fact, spared)]
        for row in sheet.iter_rows():
            for cell in row:
                place = '%s!%s' % (sheet.title, cell.coordinate)
                twin = other[cell.coordinate]
                # the reader gives the cells of a merged range the frame of the first
                is_free = type(cell).__name__ != 'MergedCell' and place not in spared['looks']
                if (cell.has_style or cell.value is not None) and is_free:
                    counts['cells'] += 1
                    mine, its = looks(cell, mine_known), looks(twin, its_known)
                    lost += ['%s %s' % (place, key) for key in mine if mine[key] != its[key]]
                if cell.value is not None and place not in spared['contents']:
                    counts['contents'] += 1
                    if cell.value != twin.value:
                        lost.append('%s content %r, was %r' % (place, twin.value, cell.value))
                counts['facts'] += len(said(cell))
                lost += ['%s %s' % (place, one) for one in said(cell) if one not in said(twin) and not gone(one, spared)]
    for name in one.defined_names.definedName:
        if 'ENCL' in (name.attr_text or '').upper() or name.name.upper().startswith('_XLDUDF'):
            continue
        counts['facts'] += 1
        fact = 'name %s' % name.name
        if name.attr_text not in [its.attr_text for its in two.defined_names.definedName if its.name == name.name]:
            lost += [] if gone(fact, spared) else [fact]
    if one.epoch != two.epoch:
        lost.append('days from %s' % two.epoch)
    return counts, lost


def parts(before, after):
    """Parts that are gone, and those with other bytes."""
    with zipfile.ZipFile(before) as one, zipfile.ZipFile(after) as two:
        there = set(two.namelist())
        gone = [name for name in one.namelist() if name not in there and not name.endswith('/')]
        other = [name for name in one.namelist() if name in there and one.read(name) != two.read(name)]
        return {'parts': len(one.namelist()), 'gone': gone, 'other': other}


for line in sys.stdin:
    pair = json.loads(line)
    answer = parts(pair['before'], pair['after'])
    try:
        answer['counts'], answer['lost'] = compared(pair['before'], pair['after'], pair['spared'])
    except Exception as fault:
        answer['unread'] = '%s: %s' % (type(fault).__name__, fault)
    print(json.dumps(answer), flush=True)

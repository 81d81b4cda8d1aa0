"""Workbooks of invented housings as openpyxl leaves them, to the folder that is named: no cell has a kept value."""
import os
import sys
from datetime import datetime

from openpyxl import Workbook
from openpyxl.chart import BarChart, PieChart, Reference, ScatterChart, Series
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule, ColorScaleRule, DataBarRule, FormulaRule, IconSetRule
from openpyxl.styles import Alignment, Border, Font, NamedStyle, PatternFill, Protection, Side
from openpyxl.utils.datetime import CALENDAR_MAC_1904
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.pagebreak import Break
from openpyxl.worksheet.table import Table, TableFormula, TableStyleInfo

from reckoned import call


def plainly(name, *arguments):
    """A call as it is typed."""
    return '=ENCL.%s(%s)' % (name, ','.join(str(argument) for argument in arguments))


def rows(s, lines):
    for line in lines:
        s.append(line)


def styles(book):
    """Looks of cells, own and named."""
    s = book.active
    s.title = 'Boss'
    book.add_named_style(NamedStyle(name='size', number_format='0.000', font=Font(bold=True, color='1F4E79')))
    rows(s, [['hole', 2.45], ['wall', 1.15], ['OD', plainly('BOSS.OD', 'B1', 'B2')],
             ['with draft', plainly('BOSS.OD', 'B1', 'B2', '10.5', '1.5')], ['both', '=SUM(B3:B4)'],
             ['far', plainly('boss.od', '$B$1', 'Boss!B2').replace('ENCL', 'encl')]])
    for at in ['B1', 'B2', 'B3']:
        s[at].style = 'size'
    s['B4'].number_format = '0.0" mm"'
    s['B4'].fill = PatternFill('solid', start_color='FFF2CC')
    s['B4'].border = Border(top=Side('thin'), bottom=Side('double', color='FF0000'))
    s['B5'].alignment = Alignment(horizontal='center', vertical='top', text_rotation=45, wrap_text=True)
    s['B5'].protection = Protection(locked=False, hidden=True)
    s['A5'].font = Font(italic=True, strike=True, underline='double', size=14, name='Georgia')
    s['C1'] = datetime(2026, 2, 14, 9, 30)
    s['C2'] = 0.615
    s['C2'].number_format = '0.0%'
    s['C3'] = True
    s['C4'] = '=NOT(C3)'
    s.column_dimensions['A'].width = 17.3
    s.column_dimensions['D'].hidden = True
    s.row_dimensions[4].height = 27


def hidden(book):
    """Sheets that are not to be seen, of which live cells need one."""
    s = book.active
    s.title = 'Seen'
    data, deep, other = book.create_sheet('Hidden data'), book.create_sheet('Deep'), book.create_sheet('Unread')
    rows(data, [['hole', 2.35], ['wall', 1.45]])
    rows(deep, [['tolerance', 0.125], ['secret', 'a price list'], ['OD', call('BOSS.OD', "'Hidden data'!B1", "'Hidden data'!B2")]])
    rows(other, [['nobody reads this', 3.5]])
    data.sheet_state, deep.sheet_state, other.sheet_state = 'hidden', 'veryHidden', 'hidden'
    rows(s, [['OD', call('BOSS.OD', "'Hidden data'!B1", "'Hidden data'!B2")],
             ['sum', call('STACK.WORST', 'Deep!B1:B1')], ['of it', '=Deep!B3*2']])
    book.defined_names.append(DefinedName('secret_tolerance', attr_text='Deep!$B$1'))
    book.defined_names.append(DefinedName('local', localSheetId=0, attr_text="'Hidden data'!$B$2"))
    s['B4'] = call('BOSS.OD', "'Hidden data'!B1", 'local')
    s['B5'] = call('BOSS.OD', "2.55", 'secret_tolerance')
    s.row_dimensions[7].hidden = True
    s['A7'] = 'hidden row'


def tables(book):
    """Two tables on one sheet, one with a calculated column."""
    s = book.active
    s.title = 'Tables'
    rows(s, [['hole', 'wall', 'OD', None, 'part', 'length'],
             [2.45, 1.15, plainly('BOSS.OD', 'Bosses[[#This Row],[hole]]', 'Bosses[[#This Row],[wall]]'), None, 'lid', 12.5],
             [2.65, 1.25, plainly('BOSS.OD', 'Bosses[[#This Row],[hole]]', 'Bosses[[#This Row],[wall]]'), None, 'tub', 14.5],
             [3.05, 1.45, plainly('BOSS.OD', 'Bosses[[#This Row],[hole]]', 'Bosses[[#This Row],[wall]]')]])
    bosses = Table(displayName='Bosses', ref='A1:C4', tableStyleInfo=TableStyleInfo(name='TableStyleLight9', showRowStripes=True))
    bosses._initialise_columns()
    for column, name in zip(bosses.tableColumns, ['hole', 'wall', 'OD']):
        column.name = name
    of_row = 'Bosses[[#This Row],[hole]],Bosses[[#This Row],[wall]]'
    bosses.tableColumns[2].calculatedColumnFormula = TableFormula(attr_text='ENCL.BOSS.OD(%s)' % of_row)
    s.add_table(bosses)
    s.add_table(Table(displayName='Parts', ref='E1:F3'))
    s['H1'] = plainly('PENETRATION', 'INDEX(Parts[length],MATCH("tub",Parts[part],0))', 'MAX(Bosses[wall])')
    s['H2'] = plainly('STACK.RSS', 'Bosses[wall]')
    s['H3'] = '=SUM(Bosses[OD])'
    s['H4'] = plainly('BOSS.OD', 'SUM(Bosses[[hole]:[wall]])', '1')


def conditions(book):
    """Every kind of condition and check; some call the add-in."""
    s = book.active
    s.title = 'Rules'
    rows(s, [['hole', 2.45, 3.35], ['wall', 1.15, 1.45], ['OD', call('BOSS.OD', 'B1', 'B2'), call('BOSS.OD', 'C1', 'C2')],
             ['state', call('CHECK.MAX', 'B3', '4.5'), call('CHECK.MAX', 'C3', '6.5')]])
    s.conditional_formatting.add('B1:C2', ColorScaleRule(start_type='min', start_color='FFFFFF', end_type='max', end_color='63BE7B'))
    s.conditional_formatting.add('B3:C3', DataBarRule('num', 0, 'num', 10, color='638EC6'))
    s.conditional_formatting.add('B2:C2', IconSetRule('3Arrows', 'percent', [0, 33, 67]))
    s.conditional_formatting.add('B1:C1', CellIsRule(operator='lessThan', formula=['1'], font=Font(color='FF0000')))
    s.conditional_formatting.add('B4:C4', FormulaRule(formula=['B4="fail"'], fill=PatternFill(bgColor='FFC7CE')))
    s.conditional_formatting.add('B3:C3', FormulaRule(formula=['_xldudf_ENCL_CHECK_MAX(B3,6)="fail"'], fill=PatternFill(bgColor='FFEB9C')))
    kind = DataValidation(type='list', formula1='"pan,flat"', allow_blank=True)
    size = DataValidation(type='decimal', operator='between', formula1='0.5', formula2='$B$1*4')
    ours = DataValidation(type='custom', formula1='_xldudf_ENCL_BOSS_OD($B$1,$B$2)<9')
    for check, at in [(kind, 'E1'), (size, 'B1:C2'), (ours, 'E2')]:
        s.add_data_validation(check)
        check.add(at)
    s['E1'] = 'pan'


def pictured(book):
    """Charts, remarks, links, merged cells, a locked sheet."""
    s = book.active
    s.title = 'Charted'
    for r in range(5):
        s.append([2.15 + r / 5, 1.05 + r / 10, plainly('BOSS.OD', f'A{r + 1}', f'B{r + 1}')])
    for kind, at in [(BarChart(), 'E2'), (PieChart(), 'E20')]:
        kind.add_data(Reference(s, min_col=3, min_row=1, max_row=5))
        s.add_chart(kind, at)
    curve = ScatterChart()
    curve.series.append(Series(Reference(s, min_col=3, min_row=1, max_row=5), Reference(s, min_col=1, min_row=1, max_row=5), title='OD'))
    book.create_chartsheet('Curve').add_chart(curve)
    s['A7'] = 'drawing'
    s['A7'].hyperlink = 'https://example.org/drawing'
    s['A8'] = 'merged'
    s.merge_cells('A8:C9')
    s['C1'].comment = Comment('as on the sample', 'A. Designer')
    s.protection.sheet = True
    s.protection.password = 'word'
    s.freeze_panes = 'B2'
    last = book.create_sheet('Last')
    last['A1'] = '=SUM(Charted!C1:C5)'
    last['A2'] = plainly('BOSS.OD', 'A1', 'Charted!B5')


def printed(book):
    """Days from 1904, array formulas, groups, filters, and all of a printed page."""
    book.epoch = CALENDAR_MAC_1904
    s = book.active
    s.title = 'Printed'
    for r in range(6):
        s.append([2.15 + r / 5, 1.05 + r / 10])
    s['C1'] = datetime(2026, 2, 14)
    s['D1'] = '=YEAR(C1)'
    for at, formula, area in [('E1', 'SUM(A1:A6*B1:B6)', 'E1'), ('F1', 'A1:A6*2', 'F1:F6')]:
        s[at] = '=' + formula
        s.formula_attributes[at] = {'t': 'array', 'ref': area}
    s['G1'] = plainly('BOSS.OD', 'E1', 'F2')
    s['G2'] = plainly('STACK.RSS', 'F1:F6')
    s.column_dimensions.group('H', 'J', outline_level=1, hidden=True)
    s.row_dimensions.group(8, 9, outline_level=1)
    s.auto_filter.ref = 'A1:B6'
    s.print_area = 'A1:G20'
    s.print_title_rows = '1:1'
    s.oddHeader.center.text, s.oddFooter.right.text = 'Boss', 'Page &P'
    s.row_breaks.append(Break(id=10))
    s.page_setup.orientation, s.page_setup.paperSize = 'landscape', s.PAPERSIZE_A4
    s.sheet_properties.tabColor = '63BE7B'
    s.sheet_view.showGridLines, s.sheet_view.zoomScale = False, 90
    s.sheet_view.rightToLeft = True
    book.properties.creator, book.properties.keywords = 'A. Designer', 'boss'


BOOKS = {'styles': styles, 'hidden': hidden, 'tables': tables, 'conditions': conditions, 'pictured': pictured, 'printed': printed}

if __name__ == '__main__':
    for title, write in BOOKS.items():
        workbook = Workbook()
        write(workbook)
        workbook.save(os.path.join(sys.argv[1], f'o-{title}.xlsx'))

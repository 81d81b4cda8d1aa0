"""Workbooks of invented housings as XlsxWriter leaves them, to the folder that is named: what formulas can be."""
import os
import sys
from datetime import date

import xlsxwriter

from more_xlsxwriter import MORE
from reckoned import call, engaged, od, rss, state

HOLES = [2.4, 2.6, 3.05, 3.4, 2.25]
WALLS = [1.2, 1.35, 1.5, 1.45, 1.15]


def lookups(book):
    """Arguments that look something up."""
    s, p = book.add_worksheet('Joints'), book.add_worksheet('Parts')
    p.write_row(0, 0, ['key', 'hole', 'wall', 'length'])
    for r, key in enumerate(['A', 'B', 'C', 'D', 'E']):
        p.write_row(r + 1, 0, [key, HOLES[r], WALLS[r], 10.5 + r])
    s.write_row(0, 0, ['key', 'vlookup', 'index', 'xlookup', 'round', 'guarded', 'missing', 'choose'])
    for r, key in enumerate(['C', 'A', 'E', 'B']):
        i, row = 'ABCDE'.index(key), r + 2
        s.write(r + 1, 0, key)
        v = f'VLOOKUP($A{row},Parts!$A$2:$D$6,%d,FALSE)'
        m = f'INDEX(Parts!$%s$2:$%s$6,MATCH($A{row},Parts!$A$2:$A$6,0))'
        x = f'_xlfn.XLOOKUP($A{row},Parts!$A$2:$A$6,Parts!$B$2:$B$6)'
        value = od(HOLES[i], WALLS[i])
        s.write_formula(r + 1, 1, call('BOSS.OD', v % 2, v % 3), None, value)
        s.write_formula(r + 1, 2, call('BOSS.OD', m % ('B', 'B'), m % ('C', 'C')), None, value)
        s.write_formula(r + 1, 3, call('BOSS.OD', x, '1.25'), None, od(HOLES[i], 1.25))
        s.write_formula(r + 1, 4, '=ROUND(%s,1)+1' % call('PENETRATION', v % 4, f'C{row}/2')[1:], None, round(10.5 + i - value / 2, 1) + 1)
        s.write_formula(r + 1, 5, '=IFERROR(%s,"none")' % call('BOSS.OD', v % 2, v % 3)[1:], None, value)
        s.write_formula(r + 1, 6, '=IFERROR(%s,"none")' % call('BOSS.OD', 'VLOOKUP("Z",Parts!$A$2:$D$6,2,FALSE)', '1')[1:], None, 'none')
        s.write_formula(r + 1, 7, call('BOSS.OD', f'CHOOSE({i % 2 + 1},Parts!$B$2,Parts!$B$3)', f'MIN(Parts!$C$2:$C$6)'), None,
                        od(HOLES[i % 2], min(WALLS)))


def table(book):
    """A table with a calculated column, and formulas that read it by name."""
    s = book.add_worksheet('Bosses and more')
    data = [[f'B{i}', HOLES[i], WALLS[i]] for i in range(5)]
    column = call('BOSS.OD', 'Bosses[[#This Row],[hole]]', 'Bosses[[#This Row],[wall]]')
    ods = [od(h, w) for _, h, w in data]
    s.add_table('B3:F9', {
        'name': 'Bosses', 'data': data, 'total_row': True, 'style': 'Table Style Medium 4', 'columns': [
            {'header': 'name', 'total_string': 'largest'}, {'header': 'hole'}, {'header': 'wall'},
            {'header': 'OD mm', 'formula': column, 'total_function': 'max', 'total_value': max(ods)},
            {'header': 'twice', 'formula': '=Bosses[[#This Row],[OD mm]]*2', 'total_function': 'sum', 'total_value': 2 * sum(ods)},
        ]})
    for r in range(5):
        s.write_formula(3 + r, 4, column, None, ods[r])
        s.write_formula(3 + r, 5, '=Bosses[[#This Row],[OD mm]]*2', None, 2 * ods[r])
    s.write_formula('E9', '=SUBTOTAL(104,Bosses[OD mm])', None, max(ods))
    s.write_formula('F9', '=SUBTOTAL(109,Bosses[twice])', None, 2 * sum(ods))
    s.write_formula('H4', '=SUM(Bosses[OD mm])', None, sum(ods))
    s.write_formula('H5', call('STACK.RSS', 'Bosses[wall]'), None, rss(WALLS))
    s.write_formula('H6', call('BOSS.OD', 'Bosses[[#Totals],[OD mm]]', '1'), None, max(ods) + 2)
    s.write_formula('H7', '=COUNTA(Bosses[[#Headers],[hole]:[OD mm]])', None, 3)
    other = book.add_worksheet('Reads')
    other.write_formula('A1', '=AVERAGE(Bosses[wall])', None, sum(WALLS) / 5)
    other.write_formula('A2', call('BOSS.OD', 'A1', 'MAX(Bosses[wall])'), None, od(sum(WALLS) / 5, max(WALLS)))


def arrays(book):
    """Array formulas, spilled ones and what reads them."""
    s = book.add_worksheet('Arrays')
    s.write_column('A2', HOLES)
    s.write_column('B2', WALLS)
    s.write_array_formula('C2:C2', '{=SUM(A2:A6*B2:B6)}', None, sum(h * w for h, w in zip(HOLES, WALLS)))
    s.write_array_formula('D2:D6', '{=A2:A6*2}', None, 2 * HOLES[0])
    for r in range(1, 5):
        s.write_number(1 + r, 3, 2 * HOLES[r])
    s.write_formula('E2', call('BOSS.OD', 'D4', '1'), None, 2 * HOLES[2] + 2)
    s.write_formula('E3', call('STACK.RSS', 'D2:D6'), None, rss([2 * h for h in HOLES]))
    s.write_array_formula('E4:E4', '{=MAX(IF(A2:A6>2.5,B2:B6))}', None, max(w for h, w in zip(HOLES, WALLS) if h > 2.5))
    s.write_formula('E5', call('BOSS.OD', 'C2', 'E4'), None, od(sum(h * w for h, w in zip(HOLES, WALLS)), 1.5))
    s.write_dynamic_array_formula('G2:G6', '=_xlfn._xlws.SORT(A2:A6)', None, min(HOLES))
    for r, value in enumerate(sorted(HOLES)[1:]):
        s.write_number(2 + r, 6, value)
    s.write_formula('H2', call('STACK.WORST', '_xlfn.ANCHORARRAY(G2)'), None, sum(HOLES))
    s.write_dynamic_array_formula('I2:I6', call('BOSS.OD', 'A2:A6', '1'), None, HOLES[0] + 2)
    for r in range(1, 5):
        s.write_number(1 + r, 8, HOLES[r] + 2)
    s.write_array_formula('J2:J2', '{=SUMPRODUCT(%s*(A2:A6>0))}' % call('STACK.SHARE', 'B2:B6')[1:], None, 1)


def letters(book):
    """LET, @ and names inside formulas."""
    s = book.add_worksheet('Let')
    s.write_column('A1', HOLES)
    s.write_column('B1', WALLS)
    s.write_formula('C1', '=_xlfn.LET(_xlpm.h,A1,_xlpm.w,B1,%s)' % call('BOSS.OD', '_xlpm.h', '_xlpm.w')[1:], None, od(HOLES[0], WALLS[0]))
    s.write_formula('C2', '=_xlfn.LET(_xlpm.h,A2*1.1,_xlpm.h+%s)' % call('BOSS.OD', '_xlpm.h', 'B2')[1:], None,
                    HOLES[1] * 1.1 + od(HOLES[1] * 1.1, WALLS[1]))
    s.write_formula('C3', call('BOSS.OD', '_xlfn.SINGLE(A1:A5)', '_xlfn.SINGLE($B$1:$B$5)'), None, od(HOLES[2], WALLS[2]))
    s.write_formula('C4', '=_xlfn.SINGLE(%s)' % call('BOSS.OD', 'A4', 'B4')[1:], None, od(HOLES[3], WALLS[3]))
    s.write_formula('C5', '=IF(A5>2,%s,%s)' % (call('BOSS.OD', 'A5', 'B5')[1:], call('BOSS.OD', 'A5', '1')[1:]), None,
                    od(HOLES[4], WALLS[4]))
    s.write_formula('D1', '=-C1^2+%s%%' % call('BOSS.OD', 'A1', 'B1')[1:], None, od(HOLES[0], WALLS[0]) ** 2 + od(HOLES[0], WALLS[0]) / 100)
    s.write_formula('D2', call('BOSS.OD', call('BOSS.OD', 'A2', '0.8')[1:], call('PENETRATION', 'A2', 'B2')[1:]), None,
                    od(od(HOLES[1], 0.8), HOLES[1] - WALLS[1]))


def names(book):
    """Names of every kind."""
    s, t = book.add_worksheet('Eingabe'), book.add_worksheet('Rechnung')
    for r, (name, value) in enumerate([('hole', 2.45), ('wall', 1.35), ('height', 12.5), ('draft', 0.75)]):
        s.write_row(r, 0, [name, value])
    book.define_name('Bohrung', '=Eingabe!$B$1')
    book.define_name('Wandstärke', '=Eingabe!$B$2')
    book.define_name('part.height', '=Eingabe!$B$3')
    book.define_name('draft_deg', '=1.5')
    book.define_name('doubled', '=Eingabe!$B$2*2')
    book.define_name('all_sizes', '=Eingabe!$B$1:$B$2')
    book.define_name("Rechnung!hole", '=Eingabe!$B$3')
    t.write_formula('A1', call('BOSS.OD', 'Bohrung', 'Wandstärke'), None, od(2.45, 1.35))
    t.write_formula('A2', call('BOSS.OD', 'Bohrung', 'Wandstärke', 'part.height', 'draft_deg'), None, od(2.45, 1.35, 12.5, 1.5))
    t.write_formula('A3', call('BOSS.OD', 'bohrung', 'doubled'), None, od(2.45, 2.7))
    t.write_formula('A4', call('BOSS.OD', 'hole', 'Eingabe!B2'), None, od(12.5, 1.35))
    t.write_formula('A5', call('STACK.RSS', 'all_sizes'), None, rss([2.45, 1.35]))
    t.write_formula('A6', '=Bohrung+draft_deg', None, 3.95)
    t.write_formula('A7', call('BOSS.OD', 'Bohrung', 'Wandstärke', 'Eingabe!B3', 'Eingabe!B4'), None, od(2.45, 1.35, 12.5, 0.75))


def sheets(book):
    """Sheets with every kind of name, in an order against the calculation."""
    names = ['Summary', 'Part (2)', 'Gehäuse Größe', '外壳', 'A1', 'Data', 'Steps', 'a & b <c>']
    for name in names:
        book.add_worksheet(name)
    at = {name: book.get_worksheet_by_name(name) for name in names}
    at['Part (2)'].write_row(0, 0, [2.35, 1.25])
    at['Gehäuse Größe'].write_formula('A1', call('BOSS.OD', "'Part (2)'!A1", "'Part (2)'!$B$1"), None, 4.85)
    at['外壳'].write_formula('A1', call('BOSS.OD', "'Gehäuse Größe'!A1", '1.5'), None, 7.85)
    at['A1'].write_formula('A1', call('PENETRATION', "16.5", "'外壳'!A1"), None, 8.65)
    at['Data'].write_formula('A1', "='A1'!A1+%s" % call('BOSS.OD', "'Part (2)'!A1", '1')[1:], None, 13)
    at['Steps'].write_formula('A1', call('CHECK.MAX', 'Data!A1', '12.5'), None, 'fail')
    at['a & b <c>'].write_formula('A1', call('BOSS.OD', 'Data!A1', "'A1'!A1"), None, od(13, 8.65))
    at['Summary'].write_formula('A1', call('BOSS.OD', "'a & b <c>'!A1", 'Data!A1'), None, od(od(13, 8.65), 13))
    at['Summary'].write_formula('A2', '=IF(Steps!A1="fail","look","well")', None, 'look')
    at['Summary'].write_formula('A3', call('CHECK.MAX', 'A1', '1'), None, 'fail')
    at['Summary'].write_formula('A4', call('CHECK.WORST', 'A3:A3'), None, 'fail')


def apostrophe(book):
    """A sheet with an apostrophe in its name, which Gnumeric 1.12 does not read in formulas."""
    s, part = book.add_worksheet('Summary'), book.add_worksheet("Dave's part")
    part.write_row(0, 0, [2.35, 1.25])
    part.write_formula('C1', call('BOSS.OD', 'A1', 'B1'), None, 4.85)
    s.write_formula('A1', call('BOSS.OD', "'Dave''s part'!C1", "'Dave''s part'!$B$1"), None, 7.35)
    s.write_formula('A2', "='Dave''s part'!C1+A1", None, 12.2)


def filled(book):
    """Columns that were filled down."""
    s = book.add_worksheet('Filled')
    s.write_row(0, 0, ['hole', 'wall', 'length', 'OD', 'engaged', 'state'])
    s.freeze_panes(1, 0)
    for r in range(2000):
        hole, wall, length, row = 2.1 + r % 37 / 20, 1.05 + r % 11 / 10, 9.5 + r % 13 / 2, r + 2
        s.write_row(r + 1, 0, [hole, wall, length])
        s.write_formula(r + 1, 3, call('BOSS.OD', f'A{row}', f'B{row}'), None, od(hole, wall))
        s.write_formula(r + 1, 4, call('ENGAGEMENT', f'C{row}', f'B{row}', '0.5'), None, engaged(length, wall, 0.5))
        s.write_formula(r + 1, 5, call('CHECK.MAX', f'D{row}', '6'), None, state(od(hole, wall), 6))
    s.write_formula('H1', '=SUM(D2:D2001)', None, sum(od(2.1 + r % 37 / 20, 1.05 + r % 11 / 10) for r in range(2000)))


BOOKS = {
    'lookups': lookups, 'table': table, 'arrays': arrays, 'let': letters, 'names': names, 'sheets': sheets,
    'apostrophe': apostrophe, 'filled': filled, **MORE,
}

if __name__ == '__main__':
    for title, write in BOOKS.items():
        workbook = xlsxwriter.Workbook(os.path.join(sys.argv[1], f'x-{title}.xlsx'), {'date_1904': title == 'dates 1904'})
        workbook.set_properties({'author': 'A. Designer', 'company': 'Invented', 'created': date(2026, 2, 14)})
        write(workbook)
        workbook.close()

"""Workbooks of invented housings as XlsxWriter leaves them: what stands beside formulas."""
from datetime import date
from io import BytesIO

from reckoned import call, engaged, od, png, rss, state


def inputs(s, rows):
    for r, (label, value) in enumerate(rows):
        s.write_row(r, 0, [label, value])


def dates_1904(book):
    """Days counted from 1904, formats, own conditions and checks, and some that call the add-in."""
    s = book.add_worksheet('Formats')
    day, mm = book.add_format({'num_format': 'yyyy-mm-dd'}), book.add_format({'num_format': '0.00" mm"', 'bold': True})
    percent, money = book.add_format({'num_format': '0.0%', 'italic': True}), book.add_format({'num_format': '#,##0.00 [$€-407]'})
    s.write_datetime('A1', date(2026, 2, 14), day)
    s.write_formula('B1', '=YEAR(A1)', None, 2026)
    s.write_number('A2', 2.45, mm)
    s.write_number('A3', 1.25, mm)
    s.write_formula('A4', call('BOSS.OD', 'A2', 'A3'), mm, od(2.45, 1.25))
    s.write_number('A5', 0.615, percent)
    s.write_number('A6', 1234.5, money)
    s.write_formula('A7', call('CHECK.MAX', 'A4', '4.5'), book.add_format({'font_color': '#9C0006'}), state(od(2.45, 1.25), 4.5))
    red, green = book.add_format({'bg_color': '#FFC7CE'}), book.add_format({'bg_color': '#C6EFCE'})
    s.conditional_format('A2:A4', {'type': 'cell', 'criteria': '>', 'value': 2, 'format': green})
    s.conditional_format('A2:A6', {'type': 'data_bar'})
    s.conditional_format('A5:A6', {'type': '3_color_scale'})
    s.conditional_format('A7', {'type': 'text', 'criteria': 'containing', 'value': 'fail', 'format': red})
    s.conditional_format('C1:C3', {'type': 'icon_set', 'icon_style': '3_traffic_lights'})
    s.conditional_format('A2', {'type': 'formula', 'criteria': call('BOSS.OD', '$A$2', '$A$3') + '>4', 'format': red})
    s.write_column('C1', [1, 2, 3])
    s.data_validation('A2:A3', {'validate': 'decimal', 'criteria': 'between', 'minimum': 0.5, 'maximum': 9.5, 'input_title': 'size'})
    s.data_validation('D1', {'validate': 'list', 'source': ['pan', 'flat', 'raised']})
    s.data_validation('D2', {'validate': 'custom', 'value': call('BOSS.OD', '$A$2', '$A$3') + '>3'})
    s.write('D1', 'pan')


def charts(book):
    """Charts over live cells, one sheet that is a chart, a picture, sparklines, a text box."""
    s = book.add_worksheet('Sizes')
    for r in range(6):
        s.write_row(r, 0, [2.15 + r / 4, 1.05 + r / 10])
        s.write_formula(r, 2, call('BOSS.OD', f'A{r + 1}', f'B{r + 1}'), None, od(2.15 + r / 4, 1.05 + r / 10))
    for kind, at in [('line', 'E1'), ('column', 'E18')]:
        chart = book.add_chart({'type': kind})
        chart.add_series({'name': 'OD', 'categories': '=Sizes!$A$1:$A$6', 'values': '=Sizes!$C$1:$C$6', 'trendline': {'type': 'linear'}})
        chart.set_title({'name': '=Sizes!$H$1'})
        s.insert_chart(at, chart)
    page = book.add_chartsheet('Curve')
    curve = book.add_chart({'type': 'scatter', 'subtype': 'smooth'})
    curve.add_series({'categories': '=Sizes!$A$1:$A$6', 'values': '=Sizes!$C$1:$C$6'})
    page.set_chart(curve)
    s.write('H1', 'diameter over hole')
    s.insert_image('E35', 'picture.png', {'image_data': BytesIO(png()), 'description': 'a frame'})
    s.add_sparkline('D1', {'range': 'Sizes!A1:C1', 'markers': True})
    s.insert_textbox('E40', 'a remark', {'width': 120, 'height': 40})
    after = book.add_worksheet('After the chart')
    after.write_formula('A1', call('BOSS.OD', 'Sizes!C1', 'Sizes!B6'), None, od(od(2.15, 1.05), 1.55))


def dressed(book):
    """All that is said and set beside cells."""
    s, hidden = book.add_worksheet('Page'), book.add_worksheet('Prices')
    bold, grey = book.add_format({'bold': True, 'border': 1, 'text_wrap': True}), book.add_format({'bg_color': '#DDDDDD', 'locked': False})
    s.merge_range('A1:D1', 'Boss of the lid', bold)
    s.write_row('A2', ['hole', 2.55], grey)
    s.write_row('A3', ['wall', 1.15], grey)
    s.write_formula('B4', call('BOSS.OD', 'B2', 'B3'), bold, od(2.55, 1.15))
    s.write_formula('B5', '=Prices!B1*%s' % call('PENETRATION', '12.5', 'B4')[1:], None, 9.99 * (12.5 - od(2.55, 1.15)))
    s.write_comment('B2', 'measured on the sample', {'author': 'A. Designer'})
    s.write_comment('B4', 'ask the moulder')
    s.write_url('C2', 'https://example.org/drawing', string='drawing')
    s.write_url('C3', "internal:'Prices'!A1", string='prices')
    s.write_rich_string('C5', bold, 'rich ', grey, 'text')
    s.set_row(6, None, None, {'hidden': True})
    s.write('A7', 'a hidden row')
    s.set_row(8, 31.5, None, {'level': 1})
    s.set_column('E:F', None, None, {'hidden': True})
    s.set_column('A:A', 22.5)
    s.set_column('H:H', 9.25, grey)
    hidden.write_row(0, 0, ['a piece', 9.99])
    hidden.hide()
    s.protect('word', {'format_cells': True})
    s.freeze_panes(1, 1)
    s.autofilter('A2:B3')
    s.set_landscape()
    s.set_paper(9)
    s.set_header('&L&"Arial,Bold"Housing&R&D')
    s.set_footer('&CPage &P of &N')
    s.print_area('A1:H20')
    s.repeat_rows(0)
    s.fit_to_pages(1, 0)
    s.set_margins(left=0.5)
    s.set_h_pagebreaks([12])
    s.set_tab_color('#1F4E79')
    s.set_zoom(85)
    s.ignore_errors({'number_stored_as_text': 'A1:H20'})
    book.set_custom_property('Project', 'Logger 7')
    book.set_custom_property('Approved', False)


def units(book):
    """Texts with their unit, and formulas that read them as text."""
    s = book.add_worksheet('Units')
    rows = [('hole', '2.4 mm', 2.4), ('wall', '0.05 in', 1.27), ('height', '12,5 mm', 12.5),
            ('gap', '1/16 in', 1.5875), ('draft', '1.5°', 1.5)]
    inputs(s, [(label, text) for label, text, _ in rows])
    h, w, z, gap, draft = [value for _, _, value in rows]
    s.write_formula('C1', call('BOSS.OD', 'B1', 'B2'), None, od(h, w))
    s.write_formula('C2', call('BOSS.OD', 'B1', 'B2', 'B3', 'B5'), None, od(h, w, z, draft))
    s.write_formula('C3', call('LENGTH.MM', 'B4'), None, gap)
    s.write_formula('C4', '="hole "&B1', None, 'hole 2.4 mm')
    s.write_formula('C5', '=LEN(B3)', None, 7)
    s.write_formula('C6', call('STACK.WORST', 'B1:B4'), None, h + w + z + gap)
    s.write_formula('C7', call('BOSS.OD', '"2.5 mm"', '1.25'), None, 5)


def chains(book):
    """Calls that read calls, backwards and through errors."""
    front, s, back = book.add_worksheet('Front'), book.add_worksheet('Stack'), book.add_worksheet('Back')
    tolerances, values = [0.15, 0.08, 0.12, 0.05], [14.25, -3.35, -1.6, 2.15]
    for r in range(4):
        s.write_row(r, 0, [f'link {r}', values[r], tolerances[r]])
    s.write_formula('E1', call('STACK.NOMINAL', 'B1:B4'), None, sum(values))
    s.write_formula('E2', call('STACK.RSS', 'C1:C4'), None, rss(tolerances))
    s.write_formula('E3', call('STACK.WORST', 'C1:C4'), None, sum(tolerances))
    s.write_formula('E4', call('STACK.RSS', 'C1:C4', '', '1.5'), None, 1.5 * rss(tolerances))
    back.write_formula('A1', '=Stack!E1+Stack!E2', None, sum(values) + rss(tolerances))
    back.write_formula('A2', call('BOSS.OD', 'A1', 'Stack!E3'), None, od(sum(values) + rss(tolerances), sum(tolerances)))
    front.write_formula('A1', call('CHECK.MAX', 'Back!A2', 'Stack!B1'), None, state(od(sum(values) + rss(tolerances), 0.4), 14.25))
    front.write_formula('A2', call('ENGAGEMENT', 'Stack!B1', 'Back!A1', '0.4'), None, engaged(14.25, sum(values) + rss(tolerances), 0.4))
    front.write_formula('A3', '=NA()', None, '#N/A')
    front.write_formula('A4', '=IFERROR(%s,-1)' % call('BOSS.OD', 'A3', '1')[1:], None, -1)
    front.write_formula('A5', '=IF(ISNUMBER(%s),"well","none")' % call('BOSS.OD', '-4', '1')[1:], None, 'none')
    front.write_formula('A6', '=SUM(A2,%s)/2' % call('STACK.WORST', 'Stack!C1:C4')[1:], None,
                        (engaged(14.25, sum(values) + rss(tolerances), 0.4) + sum(tolerances)) / 2)
    front.write_formula('A7', '=IFERROR(%s,Stack!B1)' % call('BOSS.OD', 'Stack!B4', 'Stack!C1')[1:], None, od(2.15, 0.15))
    front.write_formula('A8', '="OD "&ROUND(%s,2)' % call('BOSS.OD', 'Stack!B4', 'Stack!C1')[1:], None, 'OD 2.45')


def others(book):
    """Functions of others, functions that came late, and words that only look like a call."""
    s = book.add_worksheet('Others')
    s.write_column('A1', [2.45, 1.25, 7])
    s.write_formula('B1', '=_xldudf_OTHER_PRICE(A1)', None, 12.5)
    s.write_formula('B2', '=_xll.THEIR.SIZE(A2)', None, 3)
    s.write_formula('B3', call('BOSS.OD', 'A1', 'A2'), None, od(2.45, 1.25))
    s.write_formula('B4', '="ENCL.BOSS.OD(A1) is text"', None, 'ENCL.BOSS.OD(A1) is text')
    s.write('B5', 'type =ENCL.BOSS.OD(A1,A2) here')
    s.write_formula('B6', '=_xlfn.TEXTJOIN("-",TRUE,A1:A2)', None, '2.45-1.25')
    s.write_formula('B7', '=_xlfn.IFS(A1>2,"large",TRUE,"small")', None, 'large')
    s.write_formula('B8', call('BOSS.OD', 'A1', '_xlfn.IFS(A1>2,A2,TRUE,2)'), None, od(2.45, 1.25))
    s.write_formula('B9', call('BOSS.OD', '_xldudf_OTHER_PRICE(A1)', 'A2'), None, od(12.5, 1.25))
    s.write_formula('B10', '=MYENCL(A1)', None, '#NAME?')
    s.write_formula('B11', '=SUM(B3,A1:A3)*COUNTIF(A1:A3,">2")', None, (od(2.45, 1.25) + 2.45 + 1.25 + 7) * 2)


MORE = {'dates 1904': dates_1904, 'charts': charts, 'dressed': dressed, 'units': units, 'chains': chains, 'others': others}

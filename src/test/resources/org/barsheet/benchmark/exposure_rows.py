"""Writes only the exposure rows of a timing.json as a plain spreadsheet: exposure_rows.py timing.json rows.xlsx"""
import json, sys, zipfile
from xml.sax.saxutils import escape

film = json.load(open(sys.argv[1], encoding="utf-8"))
rate = round(float(film["film"]["frameRate"]))
hours, minutes, seconds, frames = map(int, film["film"]["firstFrame"].split(":"))
first = ((hours * 60 + minutes) * 60 + seconds) * rate + frames
rows = [["frame", "timecode", "panel", "action"]]
for shot in film["shots"]:
    layers = [[e for e in reveal["exposures"]] for reveal in shot["reveals"]]
    for frame in range(shot["startFrame"], shot["endFrameExclusive"]):
        at = first + frame
        row = [frame, "%02d:%02d:%02d:%02d" % (at // rate // 3600, at // rate // 60 % 60, at // rate % 60, at % rate)]
        row += [shot["panel"], shot["action"]]
        for layer in layers:
            row += [e["photograph"] for e in layer if e["startFrame"] <= frame < e["startFrame"] + e["frames"]]
        rows.append(row)
cell = lambda v: "<c><v>%d</v></c>" % v if isinstance(v, int) else '<c t="inlineStr"><is><t>%s</t></is></c>' % escape(v)
sheet = "".join("<row>%s</row>" % "".join(map(cell, row)) for row in rows)
main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
links = "http://schemas.openxmlformats.org/%s/2006/relationships"
office = links % "officeDocument"
with zipfile.ZipFile(sys.argv[2], "w", zipfile.ZIP_DEFLATED) as book:
    book.writestr("[Content_Types].xml", '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/sheet.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>')
    book.writestr("_rels/.rels", '<Relationships xmlns="%s"><Relationship Id="r1" Type="%s/officeDocument" Target="xl/workbook.xml"/></Relationships>' % (links % "package", office))
    book.writestr("xl/workbook.xml", '<workbook xmlns="%s" xmlns:r="%s"><sheets><sheet name="Exposure" sheetId="1" r:id="r1"/></sheets></workbook>' % (main, office))
    book.writestr("xl/_rels/workbook.xml.rels", '<Relationships xmlns="%s"><Relationship Id="r1" Type="%s/worksheet" Target="sheet.xml"/></Relationships>' % (links % "package", office))
    book.writestr("xl/sheet.xml", '<worksheet xmlns="%s"><sheetData>%s</sheetData></worksheet>' % (main, sheet))

"""Reads drawings by ezdxf and says what is in them: release, faults, and each entity with its numbers."""
import json
import sys

import ezdxf


def numbers(entity):
    dxf = entity.dxf
    kind = entity.dxftype()
    if kind == "LINE":
        return [dxf.start.x, dxf.start.y, dxf.end.x, dxf.end.y]
    if kind == "CIRCLE":
        return [dxf.center.x, dxf.center.y, dxf.radius]
    if kind == "ARC":
        return [dxf.center.x, dxf.center.y, dxf.radius, dxf.start_angle, dxf.end_angle]
    return [dxf.insert.x, dxf.insert.y, dxf.height]


def read(path):
    document = ezdxf.readfile(path)
    audit = document.audit()
    return {
        "release": document.dxfversion,
        "faults": [str(fault.message) for fault in [*audit.errors, *audit.fixes]],
        "layers": [layer.dxf.name for layer in document.layers],
        "entities": [
            {"is": entity.dxftype(), "layer": entity.dxf.layer, "numbers": numbers(entity), "text": entity.dxf.text if entity.dxftype() == "TEXT" else ""}
            for entity in document.modelspace()
        ],
    }


print(json.dumps([read(path) for path in sys.argv[1:]]))

"""What the functions give, by their own definitions: the values that a program would have kept in the cells."""
import struct
import zlib
from math import radians, sqrt, tan


def call(name, *arguments):
    """A call as Excel stores it."""
    return '=_xldudf_ENCL_%s(%s)' % (name.replace('.', '_'), ','.join(str(argument) for argument in arguments))


def od(hole, wall, distance=0, draft=0):
    return hole + 2 * wall + 2 * distance * tan(radians(draft))


def engaged(length, grip, relief=0, point=0):
    return length - grip - relief - point


def rss(tolerances):
    return sqrt(sum(one * one for one in tolerances))


def state(value, limit):
    return 'pass' if value <= limit else 'fail'


def png(width=24, height=16):
    """A picture with a border."""
    def row(y):
        return b'\0' + b''.join(
            b'\x1f\x4e\x79' if x in (0, width - 1) or y in (0, height - 1) else b'\xff\xff\xff' for x in range(width)
        )

    def chunk(kind, data):
        return struct.pack('>I', len(data)) + kind + data + struct.pack('>I', zlib.crc32(kind + data))

    rows = zlib.compress(b''.join(row(y) for y in range(height)))
    head = struct.pack('>IIBBBBB', width, height, 8, 2, 0, 0, 0)
    return b'\x89PNG\r\n\x1a\n' + chunk(b'IHDR', head) + chunk(b'IDAT', rows) + chunk(b'IEND', b'')

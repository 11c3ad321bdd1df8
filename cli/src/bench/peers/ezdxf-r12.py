"""100,000 closed triangles by the streaming writer of release 12."""
import os

from ezdxf.addons import r12writer
from runs import path, runs

FILE = path("r12.dxf")


def triangle(i):
    x, y = i % 400 * 12, i // 400 * 12
    return (x, y), (x + 10.123456, y), (x + 5.061728, y + 8.767168)


def write():
    with r12writer(FILE) as dxf:
        for i in range(100_000):
            dxf.add_polyline_2d(triangle(i), closed=True)
    return os.path.getsize(FILE)


runs(write)

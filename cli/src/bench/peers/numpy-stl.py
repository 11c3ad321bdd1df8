"""A million facets in binary, with their normals, as one array of records."""
import os

import numpy as np
from runs import path, runs

FILE, COUNT = path("numpy.stl"), 1_000_000
RECORD = np.dtype([("normal", "<f4", 3), ("corners", "<f4", (3, 3)), ("attribute", "<u2")])
i = np.arange(COUNT)
x, y, z = (i % 1000).astype(np.float32), (i // 1000).astype(np.float32), np.zeros(COUNT, np.float32)
CORNERS = np.stack([np.stack([x, y, z], 1), np.stack([x + 1, y, z + .5], 1), np.stack([x, y + 1, z + .25], 1)], 1)


def write():
    records = np.zeros(COUNT, RECORD)
    normals = np.cross(CORNERS[:, 1] - CORNERS[:, 0], CORNERS[:, 2] - CORNERS[:, 0])
    records["normal"] = normals / np.linalg.norm(normals, axis=1)[:, None]
    records["corners"] = CORNERS
    with open(FILE, "wb") as out:
        out.write(b" " * 80 + COUNT.to_bytes(4, "little"))
        records.tofile(out)
    return os.path.getsize(FILE)


runs(write)

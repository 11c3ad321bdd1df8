// 100,000 closed triangles as light polylines.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import { folder, runs, size } from './runs.mjs';

const { DxfWriter, LWPolylineFlags, point2d } = createRequire(import.meta.url)('@tarikjabiri/dxf');
const file = `${folder()}/light.dxf`;
const triangle = i => {
    const x = i % 400 * 12, y = Math.floor(i / 400) * 12;
    return [[x, y], [x + 10.123456, y], [x + 5.061728, y + 8.767168]];
};
runs(() => {
    const dxf = new DxfWriter();
    for (let i = 0; i < 100000; i++) {
        dxf.addLWPolyline(triangle(i).map(([x, y]) => ({ point: point2d(x, y) })), { flags: LWPolylineFlags.Closed });
    }
    fs.writeFileSync(file, dxf.stringify());
    return size(file);
});

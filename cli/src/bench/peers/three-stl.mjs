// A million facets in binary.
import fs from 'node:fs';
import { BufferAttribute, BufferGeometry, Mesh, MeshBasicMaterial } from 'three';
import { STLExporter } from 'three/addons/exporters/STLExporter.js';
import { folder, runs, size } from './runs.mjs';

const facets = 1000000;
const places = new Float32Array(9 * facets);
for (let i = 0; i < facets; i++) {
    const x = i % 1000, y = Math.floor(i / 1000);
    places.set([x, y, 0, x + 1, y, 0.5, x, y + 1, 0.25], 9 * i);
}
const surface = new BufferGeometry();
surface.setAttribute('position', new BufferAttribute(places, 3));
surface.setAttribute('normal', new BufferAttribute(new Float32Array(9 * facets), 3));
const mesh = new Mesh(surface, new MeshBasicMaterial());
const file = `${folder()}/three.stl`;
runs(() => {
    const bytes = new STLExporter().parse(mesh, { binary: true });
    fs.writeFileSync(file, new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    return size(file);
});

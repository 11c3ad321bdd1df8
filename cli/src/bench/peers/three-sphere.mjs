// The places alone of an icosahedron of frequency 128: detail 127 makes 128 parts of an edge.
import { IcosahedronGeometry } from 'three';
import { runs } from './runs.mjs';

runs(() => new IcosahedronGeometry(1, 127).attributes.position.count / 3);

// Runs a piece of work as Entrant.java does, and prints the same.
import fs from 'node:fs';

export function runs(work) {
    const [warm, counted] = process.argv.slice(-2).map(Number);
    for (const begun = performance.now(); performance.now() - begun < 1000 * warm;) {
        work();
    }
    for (let i = 0; i < counted; i++) {
        const before = process.cpuUsage();
        const start = performance.now();
        const result = work();
        const seconds = (performance.now() - start) / 1000;
        const busy = process.cpuUsage(before);
        console.log(`run ${seconds.toFixed(4)} ${((busy.user + busy.system) / 1e6).toFixed(4)} ${result}`);
    }
}

export const folder = () => process.argv.at(-3);

export const size = file => fs.statSync(file).size;

package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One problem each: its code, its path, its place, and a piece of what is said. */
class BadBriefTest {

    /** Rows: the brief with ⏎ for line ends and OK, DOME and SIZE for what is sound, code, path, line:column, a piece of what or mend. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                // words
                "units: METRIC⏎OK | WRONG_VALUE | units | 1:1 | Did you mean metric?",
                "units: furlongs⏎OK | WRONG_VALUE | units | 1:1 | metric and imperial",
                "units:⏎OK | WRONG_VALUE | units | 1:1 | there is no value",
                "units: [metric]⏎OK | WRONG_VALUE | units | 1:1 | a list stands here",
                "units: {metric: 1}⏎OK | WRONG_VALUE | units | 1:1 | keys with values stand here",
                "dome:⏎  breakdown: 3⏎  solid: icosaedron⏎SIZE | WRONG_VALUE | dome.solid | 3:3 | Did you mean icosahedron?",
                "dome: {breakdown: 3, solid: cube}⏎SIZE | WRONG_VALUE | dome.solid | 1:22 | tetrahedron, octahedron and icosahedron",
                "dome: {breakdown: 3, spacing: fited}⏎SIZE | WRONG_VALUE | dome.spacing | 1:22 | Did you mean fitted?",
                "dome: {breakdown: 3, spacing: even}⏎SIZE | WRONG_VALUE | dome.spacing | 1:22 | chord, arc, midarc and fitted",
                "dome: {breakdown: 3, up: vertx}⏎SIZE | WRONG_VALUE | dome.up | 1:22 | Did you mean vertex?",
                "dome: {breakdown: 3, base: flat}⏎SIZE | WRONG_VALUE | dome.base | 1:22 | as-is and level",
                // breakdown
                "dome: {up: vertex}⏎SIZE | MISSING | dome.breakdown | 1:1 | breakdown: 3",
                "SIZE | MISSING | dome.breakdown | - | breakdown: 3",
                "dome: {breakdown: 0}⏎SIZE | IMPOSSIBLE | dome.breakdown | 1:8 | divides nothing",
                "dome: {breakdown: [0, 0]}⏎SIZE | IMPOSSIBLE | dome.breakdown | 1:8 | divides nothing",
                "dome: {breakdown: -3}⏎SIZE | WRONG_VALUE | dome.breakdown | 1:8 | -3 is not a whole number",
                "dome: {breakdown: 3.0}⏎SIZE | WRONG_VALUE | dome.breakdown | 1:8 | 3.0 is not a whole number",
                "dome: {breakdown: 3V}⏎SIZE | WRONG_VALUE | dome.breakdown | 1:8 | as in 3",
                "dome: {breakdown: ٣}⏎SIZE | WRONG_VALUE | dome.breakdown | 1:8 | not a whole number",
                "dome: {breakdown: [1, 2, 3]}⏎SIZE | WRONG_VALUE | dome.breakdown | 1:8 | a list of 3",
                "dome: {breakdown: [1, [2]]}⏎SIZE | WRONG_VALUE | dome.breakdown | 1:8 | a list stands here",
                "dome: {breakdown: {b: 1}}⏎SIZE | WRONG_VALUE | dome.breakdown | 1:8 | keys with values",
                "dome: {breakdown: 101}⏎SIZE | TOO_LARGE | dome.breakdown | 1:8 | 204020 panels",
                "dome: {breakdown: 101}⏎SIZE | TOO_LARGE | dome.breakdown | 1:8 | Use 100 or less.",
                "dome: {breakdown: 159, solid: octahedron}⏎SIZE | TOO_LARGE | dome.breakdown | 1:8 | Use 158 or less.",
                "dome: {breakdown: 224, solid: tetrahedron}⏎SIZE | TOO_LARGE | dome.breakdown | 1:8 | Use 223 or less.",
                "dome: {breakdown: [58, 58]}⏎SIZE | TOO_LARGE | dome.breakdown | 1:8 | [100, 0] or [57, 57]",
                "dome: {breakdown: 99999999999999999999}⏎SIZE | TOO_LARGE | dome.breakdown | 1:8 | Use 100 or less.",
                // keep
                "dome: {breakdown: 3, keep: 0/9}⏎SIZE | IMPOSSIBLE | dome.keep | 1:22 | 0/9 is not a part",
                "dome: {breakdown: 3, keep: 9/5}⏎SIZE | IMPOSSIBLE | dome.keep | 1:22 | above 0 and up to 1",
                "dome: {breakdown: 3, keep: 5/0}⏎SIZE | IMPOSSIBLE | dome.keep | 1:22 | 5/0",
                "dome: {breakdown: 3, keep: 99999999999/99999999999}⏎SIZE | IMPOSSIBLE | dome.keep | 1:22 | not a part",
                "dome: {breakdown: 3, keep: half}⏎SIZE | WRONG_VALUE | dome.keep | 1:22 | half does not say what stays",
                "dome: {breakdown: 3, keep: 0.5}⏎SIZE | WRONG_VALUE | dome.keep | 1:22 | { above: 300 mm }",
                "dome: {breakdown: 3, keep: -5/9}⏎SIZE | WRONG_VALUE | dome.keep | 1:22 | -5/9",
                "dome: {breakdown: 3, keep: [5, 9]}⏎SIZE | WRONG_VALUE | dome.keep | 1:22 | a list stands here",
                "dome: {breakdown: 3, keep: {}}⏎SIZE | MISSING | dome.keep.above | 1:22 | above: 300 mm",
                "dome: {breakdown: 3, keep: {abve: 3 m}}⏎SIZE | UNKNOWN_KEY | dome.keep.abve | 1:29 | Did you mean above?",
                "dome: {breakdown: 3, keep: {above: 3 x}}⏎SIZE | WRONG_VALUE | dome.keep.above | 1:29 | x is not a unit",
                "dome: {breakdown: 3, keep: {above: -2000 m}}⏎SIZE | TOO_LARGE | dome.keep.above | 1:29 | more than 1 km",
                "dome: {breakdown: 3, riser: -300 mm}⏎SIZE | IMPOSSIBLE | dome.riser | 1:22 | -300 mm is below 0",
                "dome: {breakdown: 3, riser: tall}⏎SIZE | WRONG_VALUE | dome.riser | 1:22 | not a number",
                // fitted
                "dome: {breakdown: 3, strut-ratio: 1.2, spacing: fited}⏎SIZE | WRONG_VALUE | dome.spacing | 1:40 | fitted?",
                "dome: {breakdown: 3, strut-ratio: wide}⏎SIZE | WRONG_VALUE | dome.strut-ratio | 1:22 | wide is not a number",
                "dome: {breakdown: 3, strut-ratio: -2, spacing: fitted}⏎SIZE | WRONG_VALUE | dome.strut-ratio | 1:22 | 1.25",
                "dome: {breakdown: 3, strut-ratio: 2 m, spacing: fitted}⏎SIZE | WRONG_VALUE | dome.strut-ratio | 1:22 | without a unit",
                "dome: {breakdown: 3, strut-ratio: 0.99, spacing: fitted}⏎SIZE | IMPOSSIBLE | dome.strut-ratio | 1:22 | 0.99 is below 1",
                "dome: {breakdown: 3, fit: few-kind, spacing: fitted}⏎SIZE | WRONG_VALUE | dome.fit | 1:22 | Did you mean few-kinds?",
                "dome: 3⏎SIZE | WRONG_VALUE | dome | 1:1 | the text 3 stands here",
                // size
                "DOME | MISSING | size | - | floor-diameter: 6.4 m",
                "DOME⏎size: {} | MISSING | size | 2:1 | floor-diameter: 6.4 m",
                "DOME⏎size: | MISSING | size | 2:1 | floor-diameter: 6.4 m",
                "DOME⏎size: {radius: 3 m, height: 2 m} | CONFLICT | size | 2:1 | radius and height",
                "DOME⏎size: {radius: 0 mm} | IMPOSSIBLE | size.radius | 2:8 | 0 mm is not above 0",
                "DOME⏎size: {radius: -3 m} | IMPOSSIBLE | size.radius | 2:8 | -3 m is not above 0",
                "DOME⏎size: {height: 0.5 mm} | IMPOSSIBLE | size.height | 2:8 | less than 1 mm",
                "DOME⏎size: {longest-cut: 1001 m} | TOO_LARGE | size.longest-cut | 2:8 | more than 1 km",
                "DOME⏎size: {floor-area: 20} | WRONG_VALUE | size.floor-area | 2:8 | Give the unit",
                "DOME⏎size: {floor-area: -20 m2} | IMPOSSIBLE | size.floor-area | 2:8 | not above 0",
                "DOME⏎size: {floor-area: 2000000 m2} | TOO_LARGE | size.floor-area | 2:8 | 1 km²",
                "DOME⏎size: {radius: '3,2 m'} | WRONG_VALUE | size.radius | 2:8 | Use a point",
                "DOME⏎size: {radius: 3,2 m} | UNKNOWN_KEY | line 2, column 18 | 2:18 | write fractions with a point",
                "DOME⏎size: {raduis: 3 m} | UNKNOWN_KEY | size.raduis | 2:8 | Did you mean radius?",
                "DOME⏎size: {Floor_Diameter: 3 m} | UNKNOWN_KEY | size.Floor_Diameter | 2:8 | Did you mean floor-diameter?",
                "DOME⏎size: {girth: 3 m} | UNKNOWN_KEY | size.girth | 2:8 | radius, floor-diameter, height, floor-area",
                "DOME⏎size: {widest-for: glazing} | WRONG_VALUE | size.widest-for | 2:8 | Describe it below covers:.",
                "DOME⏎size: {widest-from: {count: 3}} | MISSING | size.widest-from.cover | 2:8 | { cover: glazing, count: 40 }",
                "DOME⏎size: {widest-from: {cover: a, count: 3}} | WRONG_VALUE | size.widest-from.cover | 2:22 | Describe it below covers:.",
                "DOME⏎size: {widest-from: 40} | WRONG_VALUE | size.widest-from | 2:8 | indented below widest-from:",
                "DOME⏎size: {widest-from: {cover: a}}⏎covers: [{name: a}] | MISSING | size.widest-from.cover | 2:22 | Write its stock",
                "FROM {cover: a}}ROLL | MISSING | size.widest-from.length | 2:8 | length: 40 m",
                "FROM {cover: a}}SHEET | MISSING | size.widest-from.count | 2:8 | count: 40",
                "FROM {cover: a, count: 3}}ROLL | CONFLICT | size.widest-from.count | 2:32 | comes from a roll, which is measured",
                "FROM {cover: a, length: 3 m}}SHEET | CONFLICT | size.widest-from.length | 2:32 | comes in sheets, which are counted",
                "FROM {cover: a, count: 2.5}}SHEET | WRONG_VALUE | size.widest-from.count | 2:32 | 2.5 is not a whole number",
                "FROM {cover: a, count: 0}}SHEET | IMPOSSIBLE | size.widest-from.count | 2:32 | 0 is no number of sheets",
                "FROM {cover: a, length: 0 m}}ROLL | IMPOSSIBLE | size.widest-from.length | 2:32 | not above 0",
                "FROM {cover: a, count: 3, sheets: 3}}SHEET | UNKNOWN_KEY | size.widest-from.sheets | 2:42 | cover, count and length",
                "FROM {cover: a, count: 3}}⏎covers: [{name: a, stock: [{roll: 1 m}, {sheet: [2 m, 1 m]}]}] | CONFLICT | size.widest-from.cover | 2:22 | several stocks",
                "FROM {cover: a, count: 3}}⏎covers: [{name: a, stock: {sheet: [2 m, 1 m], have: 5}}] | CONFLICT | size.widest-from.count | 2:32 | Leave have out",
                "DOME⏎size: 6.4 m | WRONG_VALUE | size | 2:1 | the text 6.4 m stands here",
                "DOME⏎sise: {radius: 3 m} | UNKNOWN_KEY | sise | 2:1 | Did you mean size?",
                // frame, model, output, files, title
                "OK⏎frame: {hub-gap: -45 mm} | IMPOSSIBLE | frame.hub-gap | 3:9 | -45 mm is below 0",
                "OK⏎frame: {hub-gap: big} | WRONG_VALUE | frame.hub-gap | 3:9 | big is not a number",
                "OK⏎frame: {merge-within: -1 mm} | IMPOSSIBLE | frame.merge-within | 3:9 | -1 mm is below 0",
                "OK⏎frame: {merge-within: some} | WRONG_VALUE | frame.merge-within | 3:9 | not a number",
                "OK⏎frame: {cut-tolerance: -1 mm} | IMPOSSIBLE | frame.cut-tolerance | 3:9 | -1 mm is below 0",
                "OK⏎frame: {hub-gap: {base: -1}} | IMPOSSIBLE | frame.hub-gap.base | 3:19 | -1 is below 0",
                "OK⏎frame: {hub-gap: {5: x, other: 1}} | WRONG_VALUE | frame.hub-gap.5 | 3:19 | x is not a number",
                "OK⏎frame: {hub-gap: {other: x}} | WRONG_VALUE | frame.hub-gap.other | 3:19 | x is not a number",
                "OK⏎frame: {hub-gap: {7: 1, other: 2}} | UNKNOWN_KEY | frame.hub-gap.7 | 3:19 | 7 is not a key",
                "OK⏎frame: {hub-gap: {}} | MISSING | frame.hub-gap.other | 3:9 | base: 60 mm",
                "OK⏎frame: {hub-gap: [1]} | WRONG_VALUE | frame.hub-gap | 3:9 | a list stands here",
                "OK⏎frame: {ends: plain} | WRONG_VALUE | frame.ends | 3:9 | the text plain stands here",
                "OK⏎frame: {ends: {flatten: 40, hole: 10}} | MISSING | frame.ends.hole-edge | 3:9 | hole-edge: 20 mm",
                "OK⏎frame: {ends: {flatten: 40, hole-edge: 10}} | MISSING | frame.ends.hole | 3:9 | hole-edge: 20 mm",
                "OK⏎frame: {ends: {hole: 4, hole-edge: 10}} | MISSING | frame.ends.flatten | 3:9 | flatten: 40 mm",
                "OK⏎frame: {ends: {flatten: 0, hole: 10, hole-edge: 20}} | IMPOSSIBLE | frame.ends.flatten | 3:16 | 0 is not above 0",
                "OK⏎frame: {ends: {flatten: 9, hole: -1, hole-edge: 20}} | IMPOSSIBLE | frame.ends.hole | 3:28 | -1 is not above 0",
                "OK⏎frame: {ends: {flatten: 9, hole: 10, hole-edge: 0}} | IMPOSSIBLE | frame.ends.hole-edge | 3:38 | not above 0",
                "OK⏎frame: {ends: {flatten: 9, hole: 1, hole-edge: 2, wall: 0}} | IMPOSSIBLE | frame.ends.wall | 3:51 | not above 0",
                "OK⏎frame: {ends: {flatten: 20, hole: 10, hole-edge: 20}} | IMPOSSIBLE | frame.ends | 3:9 | only 20.0 mm are flat",
                "OK⏎frame: {ends: {mitred: 45 mm}} | WRONG_VALUE | frame.ends.mitred | 3:16 | the text 45 mm stands here",
                "OK⏎frame: {ends: {mitred: [45, 95, 1]}} | WRONG_VALUE | frame.ends.mitred | 3:16 | a list of 3",
                "OK⏎frame: {ends: {mitred: [45, 0]}} | IMPOSSIBLE | frame.ends.mitred | 3:16 | 0 is not above 0",
                "OK⏎frame: {ends: {mitred: [0, 95]}} | IMPOSSIBLE | frame.ends.mitred | 3:16 | 0 is not above 0",
                "OK⏎frame: {ends: {mitred: [45, 95], hole: 9}} | CONFLICT | frame.ends.mitred | 3:16 | either flattened or mitred",
                "OK⏎frame: {ends: {mitred: [45, 95], wall: 9}} | CONFLICT | frame.ends.wall | 3:34 | no wall",
                "OK⏎frame: {hub-gap: 1, ends: {mitred: [45, 95]}} | CONFLICT | frame.hub-gap | 3:9 | meet on the hub's axis",
                "OK⏎frame: {hub-plate: {hole: 1, hole-circle: 9}} | MISSING | frame.hub-plate.diameter | 3:9 | diameter: 140 mm",
                "OK⏎frame: {hub-plate: {diameter: 1, hole-circle: 9}} | MISSING | frame.hub-plate.hole | 3:9 | diameter: 140 mm",
                "OK⏎frame: {hub-plate: {diameter: 1, hole: 9}} | MISSING | frame.hub-plate.hole-circle | 3:9 | diameter: 140 mm",
                "OK⏎frame: {hub-plate: {diameter: 0, hole: 1, hole-circle: 9}} | IMPOSSIBLE | frame.hub-plate.diameter | 3:21 | not above 0",
                "OK⏎frame: {hub-plate: {diameter: 99, hole: 1, hole-circle: 9, slot: 0}} | IMPOSSIBLE | frame.hub-plate.slot | 3:60 | not above 0",
                "OK⏎frame: {hub-plate: {diameter: 99, hole: 1, hole-circle: 9, cutter: 0}} | IMPOSSIBLE | frame.hub-plate.cutter | 3:60 | not above 0",
                "OK⏎frame: {hub-plate: {diameter: 99, hole: 1, hole-circle: 9, slot: 5, cutter: 6}} | IMPOSSIBLE | frame.hub-plate | 3:9 | a cutter of 6.0 mm does not get into slots of 5.0 mm",
                "OK⏎frame: {hub-plate: {diameter: 99, hole: 9, hole-circle: 99}} | IMPOSSIBLE | frame.hub-plate | 3:9 | nearer the rim",
                "OK⏎frame: {hub-plate: {outline: a.dxf, hole: 1, hole-circle: 9}} | WRONG_VALUE | frame.hub-plate.outline | 3:21 | the brief is no file",
                "OK⏎frame: {hub-plate: {outline: {}, hole: 1, hole-circle: 9}} | MISSING | frame.hub-plate.outline.other | 3:21 | Write outline: plate.dxf",
                "OK⏎frame: {hub-plate: 140 mm} | WRONG_VALUE | frame.hub-plate | 3:9 | the text 140 mm stands here",
                "OK⏎frame: {bar: {kerf: 3 mm}} | MISSING | frame.bar.length | 3:9 | length: 6 m",
                "OK⏎frame: {bar: {length: 6 m, trim: 3 m}} | IMPOSSIBLE | frame.bar.trim | 3:28 | use up the bar",
                "OK⏎frame: {bar: {length: 6 m, price: 1e3}} | WRONG_VALUE | frame.bar.price | 3:28 | not a price",
                "OK⏎frame: {bar: 6 m} | WRONG_VALUE | frame.bar | 3:9 | the text 6 m",
                "OK⏎frame: {bar: [{length: 6 m}, 3]} | WRONG_VALUE | frame.bar[1] | 3:30 | the text 3",
                "OK⏎frame: {barr: 1} | UNKNOWN_KEY | frame.barr | 3:9 | Did you mean bar",
                "OK⏎covers: [] | WRONG_VALUE | covers | 3:1 | the list is empty",
                "OK⏎openings: [] | WRONG_VALUE | openings | 3:1 | the list is empty",
                "OK⏎openings: {name: door} | WRONG_VALUE | openings | 3:1 | keys with values stand here",
                "OK⏎openings: [door] | WRONG_VALUE | openings[0] | 3:12 | the text door stands here",
                "OK⏎openings: [{remove: [P1-1.01]}] | MISSING | openings[0].name | 3:12 | name: door",
                "OK⏎openings: [{name: door}] | MISSING | openings[0].remove | 3:12 | remove: [P1-5.01",
                "OK⏎openings: [{name: door, remove: P1-1.01}] | WRONG_VALUE | openings[0].remove | 3:25 | Write a list",
                "OK⏎openings: [{name: door, remove: [a, a]}] | WRONG_VALUE | openings[0].remove[1] | 3:37 | in the list already",
                "OK⏎openings: [{name: door, remove: [a], struts: stay}] | WRONG_VALUE | openings[0].struts | 3:38 | keep and remove",
                "OK⏎openings: [{name: door, remove: [a], strut: keep}] | UNKNOWN_KEY | openings[0].strut | 3:38 | Did you mean struts?",
                "OK⏎openings: [{name: a, remove: [a]}, {name: a, remove: [b]}] | CONFLICT | openings[1].name | 3:37 | called a",
                "OK⏎jigs: { strut: 23.4 mm } | WRONG_VALUE | jigs.strut | 3:9 | round 23.4 mm, square 30 mm",
                "OK⏎jigs: { strut: oval 23.4 mm } | WRONG_VALUE | jigs.strut | 3:9 | is no strut",
                "OK⏎jigs: { strut: rectangle 45 mm } | WRONG_VALUE | jigs.strut | 3:9 | rectangle 45 mm x 95 mm",
                "OK⏎jigs: { strut: round 0 mm } | IMPOSSIBLE | jigs.strut | 3:9 | not above 0",
                "OK⏎jigs: { strut: round 1 mm } | IMPOSSIBLE | jigs.strut | 3:9 | finer than holes",
                "OK⏎jigs: { wall: 0.5 mm } | IMPOSSIBLE | jigs.wall | 3:9 | two lines of a nozzle",
                "OK⏎jigs: { clearance: 3 mm } | IMPOSSIBLE | jigs.clearance | 3:9 | holds nothing",
                "OK⏎jigs: { bed: [220 mm, 220 mm] } | WRONG_VALUE | jigs.bed | 3:9 | a list of 2",
                "OK⏎jigs: { bed: [20 mm, 220 mm, 220 mm] } | IMPOSSIBLE | jigs.bed | 3:9 | takes no jig",
                "OK⏎jigs: { sockets: { depth: 9 mm } } | MISSING | jigs.sockets.strut | 3:9 | round 23.4 mm",
                "OK⏎jigs: { sockets: { strut: round 1 mm } } | IMPOSSIBLE | jigs.sockets | 3:9 | finer than holes",
                "OK⏎model: { solid: wire } | WRONG_VALUE | model.solid | 3:10 | body, shell and frame",
                "OK⏎model: {scale: 1/20} | WRONG_VALUE | model.scale | 3:9 | Write for example 1:20.",
                "OK⏎model: {scale: 1:0} | IMPOSSIBLE | model.scale | 3:9 | between 1:1 and 1:1000",
                "OK⏎model: {scale: 1:1001} | IMPOSSIBLE | model.scale | 3:9 | between 1:1 and 1:1000",
                "OK⏎model: {sheet: [100, 200]} | MISSING | model.thickness | 3:1 | Write for example thickness: 3 mm",
                "OK⏎model: {sheet: 100, thickness: 3} | WRONG_VALUE | model.sheet | 3:9 | sheet: [600 mm, 300 mm]",
                "OK⏎model: {thickness: 3 mm} | MISSING | model.sheet | 3:1 | Write for example sheet: [600 mm, 300 mm].",
                "OK⏎model: {sheet: [9, 9], thickness: 0} | IMPOSSIBLE | model.thickness | 3:24 | from 0.1 mm to 100 mm",
                "OK⏎model: {sheet: [9, 9], thickness: 1, kerf: 1} | IMPOSSIBLE | model.thickness | 3:24 | be less than",
                "OK⏎model: {sheet: [9, 9], thickness: 1, fit: -1} | IMPOSSIBLE | model.thickness | 3:24 | be less than",
                "OK⏎model: {sheet: [9, 9], thickness: 1, kind: net} | WRONG_VALUE | model.kind | 3:38 | Write a list: kind: [net].",
                "OK⏎model: {sheet: [9, 9], thickness: 1, kind: [nett]} | WRONG_VALUE | model.kind[0] | 3:45 | Did you mean net?",
                "OK⏎model: {sheet: [9, 9], thickness: 1, card: 2} | WRONG_VALUE | model.card | 3:38 | card: [420 mm, 297 mm]",
                "OK⏎model: {sheet: [9, 9], thickness: 1, tab: 0} | IMPOSSIBLE | model.tab | 3:38 | is not above 0",
                "OK⏎model: {sheet: [9, 9], thickness: 1, disk: 9} | UNKNOWN_KEY | model.disk | 3:38 | Did you mean disc?",
                "OK⏎output: {dxf: polyline} | WRONG_VALUE | output.dxf | 3:10 | Write a list: dxf: [polyline].",
                "OK⏎output: {dxf: []} | WRONG_VALUE | output.dxf | 3:10 | the list is empty",
                "OK⏎output: {dxf: [spline]} | WRONG_VALUE | output.dxf[0] | 3:16 | polyline",
                "OK⏎output: {dxf: [polyline, polyline]} | WRONG_VALUE | output.dxf[1] | 3:26 | already",
                "OK⏎output: {operations: {cut: redd}} | WRONG_VALUE | output.operations.cut | 3:23 | one of black, silver",
                "OK⏎output: {line-width: 0} | IMPOSSIBLE | output.line-width | 3:10 | not above 0",
                "OK⏎output: {line-width: 0.0005 mm} | IMPOSSIBLE | output.line-width | 3:10 | less than 0.001 mm",
                "OK⏎output: {line-width: 1 in} | TOO_LARGE | output.line-width | 3:10 | more than 10 mm",
                "OK⏎output: {line-width: hairline} | WRONG_VALUE | output.line-width | 3:10 | hairline",
                "OK⏎output: {start: middle} | WRONG_VALUE | output.start | 3:10 | The words are corner and edge.",
                "OK⏎output: {shared-edges: twice} | WRONG_VALUE | output.shared-edges | 3:10 | each and once",
                "OK⏎output: {start: edge, shared-edges: once} | CONFLICT | output.start | 3:10 | for routers",
                "OK⏎output: {closing: never} | WRONG_VALUE | output.closing | 3:10 | flag and corner",
                "OK⏎output: {flatten: 0 mm} | IMPOSSIBLE | output.flatten | 3:10 | for example 0.05 mm",
                "OK⏎output: {flatten: 2 cm} | IMPOSSIBLE | output.flatten | 3:10 | from 0.001 mm to 10 mm",
                "OK⏎output: {kerf: -1 mm} | IMPOSSIBLE | output.kerf | 3:10 | below 0",
                "OK⏎output: {kerf: 0.0001 mm} | IMPOSSIBLE | output.kerf | 3:10 | less than a thousandth",
                "OK⏎output: {kerf: 0.2 mm}⏎covers: [{name: a, stock: {sheet: [2, 1], margin: 0.1}, spacing: 0.1}] | CONFLICT | covers[0].spacing | 4:57 | Set spacing to 0.2 mm or more",
                "OK⏎output: {kerf: 0.2 mm}⏎covers: [{name: a, stock: {sheet: [2, 1], margin: 0.1}}] | CONFLICT | covers[0].spacing | 4:10 | pieces keep 0 mm apart",
                "OK⏎output: {kerf: 0.2 mm}⏎covers: [{name: a, stock: {sheet: [2, 1]}, spacing: 1}] | CONFLICT | covers[0].stock | 4:20 | Set margin to 0.1 mm or more",
                "OK⏎output: {kerf: 0.2 mm}⏎covers: [{name: a, stock: {roll: 2}, spacing: 1}] | CONFLICT | covers[0].stock | 4:20 | Set margin to 0.1 mm or more",
                "OK⏎output: {page: a4} | WRONG_VALUE | output.page | 3:10 | The words are A4 and Letter",
                "OK⏎files: [pdf] | WRONG_VALUE | files[0] | 3:9 | tables, dxf, svg, stl and book",
                "OK⏎files: [svg, svg] | WRONG_VALUE | files[1] | 3:14 | already",
                "OK⏎files: [] | WRONG_VALUE | files | 3:1 | the list is empty",
                "OK⏎files: all | WRONG_VALUE | files | 3:1 | Write a list",
                "title: ''⏎OK | WRONG_VALUE | title | 1:1 | there is no value",
                "title: '  '⏎OK | WRONG_VALUE | title | 1:1 | the title is empty",
                "title: \"a\\nb\"⏎OK | WRONG_VALUE | title | 1:1 | several lines",
                "title: \"a\\e[2Jb\"⏎OK | WRONG_VALUE | title | 1:1 | a?[2Jb",
                "title: \"a\\ud800b\"⏎OK | WRONG_VALUE | title | 1:1 | cannot be seen",
                "title: \"a\\u202eb\"⏎OK | WRONG_VALUE | title | 1:1 | cannot be seen",
                // keys
                "OK⏎tittle: x | UNKNOWN_KEY | tittle | 3:1 | Did you mean title?",
                "OK⏎jig: x | UNKNOWN_KEY | jig | 3:1 | Did you mean jigs?",
                "OK⏎colour: x | UNKNOWN_KEY | colour | 3:1 | title, units, dome, size, frame, covers, jigs, model, output, openings, assembly, spares and files",
                "OK⏎\"a.b\": x | UNKNOWN_KEY | line 3, column 1 | 3:1 | a.b is not a key",
                "OK⏎? ''⏎: x | UNKNOWN_KEY | line 3, column 3 | 3:3 | a key without a name",
                "OK⏎? [a]⏎: x | UNREADABLE | line 3, column 3 | 3:3 | a key is a single word",
                "OK⏎size: {height: 3 m} | CONFLICT | line 3, column 1 | 3:1 | already, in line 2",
                // what YAML has and a brief has not
                "OK⏎title: &t x | UNREADABLE | line 3, column 8 | 3:8 | &t is an anchor",
                "OK⏎title: *t | UNREADABLE | line 3, column 8 | 3:8 | *t is an alias",
                "OK⏎title: !!str x | UNREADABLE | line 3, column 8 | 3:8 | !!str",
                "OK⏎title: ! x | UNREADABLE | line 3, column 8 | 3:8 | the tag !",
                "OK⏎<<: {title: x} | UNREADABLE | line 3, column 1 | 3:1 | merge key",
                "OK⏎---⏎OK | UNREADABLE | line 3, column 1 | 3:1 | a second document",
                "OK⏎title: a: b | UNREADABLE | line 3, column 9 | 3:9 | goes in quotes",
                "dome:⏎\tbreakdown: 3⏎SIZE | UNREADABLE | line 2, column 1 | 2:1 | never with tabs",
                "OK⏎title: \"x | UNREADABLE | line 3, column 10 | 3:10 | this is not YAML",
                // nothing at all
                "# only⏎# comments | MISSING |  | - | the brief is empty",
                "--- | MISSING |  | - | the brief is empty",
                "- a⏎- b | WRONG_VALUE |  | - | a list stands here",
                "dome | WRONG_VALUE |  | - | the text dome stands here",
            })
    void isRefusedWithCodePathPlaceAndMend(String row, Code code, String where, String place, String piece) {
        BriefText brief = Briefs.of(row.replace("⏎", "\n")
                .replace("OK", "DOME\nSIZE")
                .replace("FROM", "DOME\nsize: {widest-from:")
                .replace("ROLL", "\ncovers: [{name: a, stock: {roll: 1 m}}]")
                .replace("SHEET", "\ncovers: [{name: a, stock: {sheet: [2 m, 1 m]}}]")
                .replace("DOME", "dome: { breakdown: 3 }")
                .replace("SIZE", "size: { radius: 3 m }"));
        List<Problem> problems = Briefs.problems(brief);
        assertThat(problems).as("%s", problems).hasSize(1);
        Problem problem = problems.get(0);
        assertThat(problem.code()).as("%s", problem).isEqualTo(code);
        assertThat(problem.where()).isEqualTo(where == null ? "" : where);
        assertThat(problem.line()).contains(piece).endsWith(problem.mend());
        assertThat(brief.explain(problem).get(0))
                .startsWith(place.equals("-") ? "brief.yaml  " : "brief.yaml:" + place + "  ");
    }

    @Test
    void anEmptyFileIsSaidToBeEmpty() {
        assertThat(Briefs.problems(Briefs.of("")))
                .singleElement()
                .extracting(Problem::code)
                .isEqualTo(Code.MISSING);
    }

    @Test
    void longTitlesAreNotRepeated() {
        String title = "x".repeat(201);
        Problem problem = Briefs.problems(Briefs.of("title: " + title + "\n" + Briefs.LEAST))
                .get(0);
        assertThat(problem.where()).isEqualTo("title");
        assertThat(problem.line()).contains("200 characters").doesNotContain(title);
    }

    @Test
    void endlessNumbersAreTooLargeAndNothingWorse() {
        String nines = "9".repeat(200_000);
        Problem one = Briefs.problems(Briefs.of("dome: {breakdown: " + nines + "}\nsize: {radius: 3 m}"))
                .get(0);
        assertThat(one.code()).isEqualTo(Code.TOO_LARGE);
        assertThat(one.line()).hasSizeLessThan(300);
        List<Problem> others = Briefs.problems(Briefs.of("dome: {breakdown: 3, keep: " + nines + "/" + 9
                + "}\nsize: {radius: " + nines + "}\nmodel: {scale: '1:1." + nines.substring(150_000) + "'}"));
        assertThat(others).hasSize(3).allMatch(problem -> problem.line().length() < 300);
    }

    @Test
    void theBenefitOfTheDoubtGoesToASolidThatIsMisspelt() {
        assertThat(Briefs.problems(Briefs.of("dome: {solid: tetrahedrn, breakdown: 223}\nsize: {radius: 3 m}")))
                .singleElement()
                .extracting(Problem::where)
                .isEqualTo("dome.solid");
    }

    @Test
    void allProblemsComeInTheOrderOfTheText() {
        BriefText brief = Briefs.of("""
                units: metrik
                size: { height: 0 m, radius: 3 furlongs }
                files: [paper, dxf, tables, pdf]
                dome:
                  up: *x
                  solid: cube
                  riser: -1 m
                title: ""
                frame: { bar: 1, hub-gap: -1 }
                """);
        List<Problem> problems = Briefs.problems(brief);
        assertThat(problems)
                .extracting(Problem::where)
                .containsExactly(
                        "units",
                        "size",
                        "size.height",
                        "size.radius",
                        "files[0]",
                        "files[3]",
                        "dome.breakdown",
                        "line 5, column 7",
                        "dome.solid",
                        "dome.riser",
                        "title",
                        "frame.bar",
                        "frame.hub-gap");
    }
}

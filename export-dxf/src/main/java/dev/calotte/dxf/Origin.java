package dev.calotte.dxf;

import dev.calotte.dxf.TagReader.Tag;

/**
 * Where a shape comes from.
 *
 * @param begin the tag that its entity begins with
 * @param layer the layer it lies on
 */
record Origin(Tag begin, String layer) {

    DxfFormatException wrong(String reason) {
        return begin.wrong(begin.value() + ": " + reason);
    }
}

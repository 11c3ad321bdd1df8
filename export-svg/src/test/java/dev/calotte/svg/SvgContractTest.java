package dev.calotte.svg;

import dev.calotte.testing.ExporterContract;

class SvgContractTest extends ExporterContract {

    SvgContractTest() {
        super(new SvgExporter(), Samples.all());
    }
}

package dev.calotte.dxf;

import dev.calotte.testing.ExporterContract;

class DxfContractTest extends ExporterContract {

    DxfContractTest() {
        super(new DxfExporter(), Samples.all());
    }
}

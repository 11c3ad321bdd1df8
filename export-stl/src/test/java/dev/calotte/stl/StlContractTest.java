package dev.calotte.stl;

import dev.calotte.testing.ExporterContract;

class StlContractTest extends ExporterContract {

    StlContractTest() {
        super(new StlExporter(), Samples.all());
    }
}

package dev.calotte.svg.book;

import dev.calotte.testing.ExporterContract;
import java.util.List;

class BookContractTest extends ExporterContract {

    BookContractTest() {
        super(new BookExporter(), List.of(SampleBook.book()));
    }
}

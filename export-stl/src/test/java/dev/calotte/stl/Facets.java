package dev.calotte.stl;

import dev.calotte.document.Document;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.io.euclidean.threed.stl.BinaryStlFacetDefinition;
import org.apache.commons.geometry.io.euclidean.threed.stl.BinaryStlFacetDefinitionReader;

/** What Apache Commons Geometry reads from a file. */
record Facets(String header, long announced, List<BinaryStlFacetDefinition> list) {

    static Facets of(Document document) throws IOException {
        return read(Samples.bytes(document));
    }

    static Facets read(byte[] bytes) {
        try (BinaryStlFacetDefinitionReader reader =
                new BinaryStlFacetDefinitionReader(new ByteArrayInputStream(bytes))) {
            ByteBuffer header = reader.getHeader();
            byte[] head = new byte[header.remaining()];
            header.get(head);
            List<BinaryStlFacetDefinition> list = new ArrayList<>();
            for (var facet = reader.readFacet(); facet != null; facet = reader.readFacet()) {
                list.add(facet);
            }
            return new Facets(new String(head, StandardCharsets.US_ASCII), reader.getNumTriangles(), list);
        }
    }
}

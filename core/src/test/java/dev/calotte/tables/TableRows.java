package dev.calotte.tables;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.support.AnnotationConsumer;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Reads the rows of a table; one without rows, or a row without its source, is an error. */
final class TableRows implements ArgumentsProvider, AnnotationConsumer<Table> {

    /** Whether only some rows are taken: mutation tests repeat every row thousands of times. */
    private static final boolean FEW = Boolean.getBoolean("calotte.few");

    private static final Map<String, JsonNode> READ = new ConcurrentHashMap<>();

    private String file;

    @Override
    public void accept(Table table) {
        file = table.value() + ".json";
    }

    @Override
    public Stream<? extends Arguments> provideArguments(ParameterDeclarations parameters, ExtensionContext context) {
        JsonNode rows = READ.computeIfAbsent(file, TableRows::read);
        int step = FEW && rows.size() > 20 ? 17 : 1;
        return IntStream.range(0, rows.size())
                .filter(i -> i % step == step / 2)
                .mapToObj(i -> Arguments.of(new Row(rows.get(i))));
    }

    private static JsonNode read(String file) {
        try (InputStream in = TableRows.class.getResourceAsStream(file)) {
            return new ObjectMapper().readTree(in).required("rows");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}

package dev.calotte.cli;

import dev.calotte.compare.Column;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** The words and numbers that options take, written as in a brief. */
final class Choices {

    private Choices() {}

    static void check(CommandSpec spec, String option, int value, int least, int most) {
        if (value < least || value > most) {
            throw new ParameterException(
                    spec.commandLine(),
                    option + " " + value + " is out of range: write a number from " + least + " to " + most + ".");
        }
    }

    private static <T> T of(String text, List<T> all) {
        return all.stream()
                .filter(each -> word(each).equals(text))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("there is no such choice as '" + text + "': write "
                        + all.stream().map(Choices::word).collect(Collectors.joining(", ")) + "."));
    }

    private static String word(Object value) {
        return value instanceof Enum<?> constant
                ? constant.name().toLowerCase(Locale.ROOT).replace('_', '-')
                : value.toString();
    }

    /** What domes have in common. */
    static final class Sames implements ITypeConverter<Same> {
        @Override
        public Same convert(String text) {
            return of(text, Arrays.asList(Same.values()));
        }
    }

    /** What rows are sorted by. */
    static final class Columns implements ITypeConverter<Column> {
        @Override
        public Column convert(String text) {
            return of(text, Arrays.asList(Column.values()));
        }
    }

    /** Solids. */
    static final class Solids implements ITypeConverter<Solid> {
        @Override
        public Solid convert(String text) {
            return of(text, Arrays.asList(Solid.values()));
        }
    }

    /** Classes of breakdowns. */
    static final class Classes implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            return of(text, List.of(1, 2, 3));
        }
    }

    /** Spacings. */
    static final class Spacings implements ITypeConverter<Spacing> {
        @Override
        public Spacing convert(String text) {
            return of(text, Arrays.asList(Spacing.values()));
        }
    }

    /** What may be up. */
    static final class Ups implements ITypeConverter<Up> {
        @Override
        public Up convert(String text) {
            return of(text, Arrays.asList(Up.values()));
        }
    }
}

package dev.calotte.cli;

import dev.calotte.compare.Column;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
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

    private static String word(Object value) {
        return value instanceof Enum<?> constant
                ? constant.name().toLowerCase(Locale.ROOT).replace('_', '-')
                : value.toString();
    }

    /** Words for the values of a choice, one of which is written. */
    private abstract static class Choice<T> implements ITypeConverter<T> {

        private final List<T> all;

        Choice(List<T> all) {
            this.all = all;
        }

        @Override
        public T convert(String text) {
            return all.stream()
                    .filter(each -> word(each).equals(text))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException("there is no such choice as '" + text + "': write "
                            + all.stream().map(Choices::word).collect(Collectors.joining(", ")) + "."));
        }
    }

    /** What domes have in common. */
    static final class Sames extends Choice<Same> {
        Sames() {
            super(List.of(Same.values()));
        }
    }

    /** What rows are sorted by. */
    static final class Columns extends Choice<Column> {
        Columns() {
            super(List.of(Column.values()));
        }
    }

    /** Solids. */
    static final class Solids extends Choice<Solid> {
        Solids() {
            super(List.of(Solid.values()));
        }
    }

    /** Classes of breakdowns. */
    static final class Classes extends Choice<Integer> {
        Classes() {
            super(List.of(1, 2, 3));
        }
    }

    /** Spacings. */
    static final class Spacings extends Choice<Spacing> {
        Spacings() {
            super(List.of(Spacing.values()));
        }
    }

    /** What may be up. */
    static final class Ups extends Choice<Up> {
        Ups() {
            super(List.of(Up.values()));
        }
    }
}

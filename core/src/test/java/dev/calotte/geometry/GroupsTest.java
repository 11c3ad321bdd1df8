package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.testing.Cases;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class GroupsTest {

    @Test
    void groupsAreNumberedByRisingValue() {
        Groups groups = Groups.of(new double[] {5, 1, 3, 1, 5, 5}, 0.5);
        assertThat(groups.count()).isEqualTo(3);
        assertThat(new int[] {groups.of(0), groups.of(1), groups.of(2), groups.of(3)})
                .containsExactly(2, 0, 1, 0);
        assertThat(new int[] {groups.size(0), groups.size(1), groups.size(2)}).containsExactly(2, 1, 3);
        assertThat(new double[] {groups.value(0), groups.value(1), groups.value(2)})
                .containsExactly(1, 3, 5);
    }

    @Test
    void chainOfSmallGapsIsOneGroup() {
        Groups groups = Groups.of(new double[] {1.8, 0, 0.9, 2.7, 4}, 1);
        assertThat(groups.count()).isEqualTo(2);
        assertThat(groups.size(0)).isEqualTo(4);
        assertThat(groups.value(0)).isZero();
        assertThat(groups.of(3)).isZero();
        assertThat(groups.of(4)).isEqualTo(1);
    }

    @Test
    void gapOfTheToleranceStillJoins() {
        assertThat(Groups.of(new double[] {1, 1.5}, 0.5).count()).isEqualTo(1);
        assertThat(Groups.of(new double[] {1, 1.5000001}, 0.5).count()).isEqualTo(2);
    }

    @Test
    void nothingMakesNoGroups() {
        assertThat(Groups.of(new double[0], 1).count()).isZero();
    }

    @Test
    void valuesGivenStayAsTheyAre() {
        double[] values = {3, 1, 2};
        Groups.of(values, 0);
        assertThat(values).containsExactly(3, 1, 2);
    }

    @Test
    void everyGroupIsApartFromTheNextAndWhole() {
        Cases.each(60, (random, size) -> {
            double[] values = random.doubles(size).toArray();
            Groups groups = Groups.of(values, 0.02);
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            int members = 0;
            for (int g = 0; g < groups.count(); g++) {
                assertThat(groups.value(g)).isEqualTo(sorted[members]);
                members += groups.size(g);
                if (members < size) {
                    assertThat(sorted[members] - sorted[members - 1]).isGreaterThan(0.02);
                }
            }
            assertThat(members).isEqualTo(size);
        });
    }
}

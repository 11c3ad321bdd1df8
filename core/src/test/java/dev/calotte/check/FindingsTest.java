package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FindingsTest {

    @Test
    void whatAgreesIsNotFound() {
        Findings findings = new Findings("dome.json", "Make it again.");
        findings.same("S1", "the length", 100, 100 + 1e-9, 1e-8);
        findings.same("S1", "the kind", "S1", "S1");
        assertThat(findings.list()).isEmpty();
        assertThat(findings.file()).isEqualTo("dome.json");
    }

    @Test
    void whatDiffersIsToldWithBothValues() {
        Findings findings = new Findings("dome.json", "Make it again.");
        findings.same("S1", "the length", 100.5, 100, 1e-8);
        findings.same("S1", "the kind", "S1", "S2");
        findings.same("S2", "the length", Double.NaN, 100, 1e-8);
        assertThat(findings.list())
                .containsExactly(
                        new Finding(
                                Fault.DIFFERENT,
                                "dome.json",
                                "S1",
                                "the length is 100.5, it should be 100.",
                                "Make it again."),
                        new Finding(
                                Fault.DIFFERENT,
                                "dome.json",
                                "S1",
                                "the kind is S1, it should be S2.",
                                "Make it again."),
                        new Finding(
                                Fault.DIFFERENT,
                                "dome.json",
                                "S2",
                                "the length is no number, it should be 100.",
                                "Make it again."));
    }

    @Test
    void theLargerOfTwoMismatchesIsKept() {
        Mismatch small = new Mismatch(1, "S1");
        Mismatch large = new Mismatch(2, "S2");
        assertThat(small.or(large)).isEqualTo(large);
        assertThat(large.or(small)).isEqualTo(large);
        assertThat(Mismatch.NONE.or(small)).isEqualTo(small);
        assertThat(Mismatch.NONE.or(new Mismatch(0, "S3")).where()).isEqualTo("S3");
    }
}

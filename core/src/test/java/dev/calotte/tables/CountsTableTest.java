package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;

class CountsTableTest {

    @Table("counts")
    void hubsStrutsAndPanelsAreAsMany(Row row) {
        Dome dome = row.dome();
        assertThat(dome.spec().breakdown().triangulationNumber()).isEqualTo(row.count("T"));
        assertThat(dome.hubs()).hasSize(row.count("V"));
        assertThat(dome.struts()).hasSize(row.count("E"));
        assertThat(dome.panels()).hasSize(row.count("F"));
    }

    @Table("counts")
    void kindsAreAsMany(Row row) {
        Parts parts = row.parts();
        assertThat(parts.strutKinds()).hasSize(row.count("strut_kinds"));
        assertThat(parts.panelKinds().stream().map(PanelKind::number).distinct())
                .hasSize(row.count("panel_kinds"));
        assertThat(parts.hubKinds().stream().map(HubKind::number).distinct()).hasSize(row.count("hub_kinds"));
    }
}

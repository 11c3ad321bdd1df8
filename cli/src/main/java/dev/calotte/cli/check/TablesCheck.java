package dev.calotte.cli.check;

import dev.calotte.check.Around;
import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.check.Findings;
import dev.calotte.check.RecordedCover;
import dev.calotte.check.RecordedDome;
import dev.calotte.check.Table;
import dev.calotte.check.TableCheck;
import dev.calotte.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Every table of a result against the record.
 *
 * @param files the files
 * @param root the record
 * @param dome what it says of the dome
 * @param covers what it says of its covers
 */
record TablesCheck(ResultFiles files, Json root, RecordedDome dome, List<RecordedCover> covers) {

    private static final int MOST_BYTES = 1 << 27;
    private static final String AGAIN = "Make the tables again; do not cut by this one.";

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        for (String name : files.names("tables/", ".csv")) {
            Findings list = new Findings(name, AGAIN);
            try {
                table(name, list);
            } catch (IOException e) {
                list.add(Fault.UNREADABLE, "", e.getMessage() + ".");
            }
            findings.addAll(list.list());
        }
        return findings;
    }

    private void table(String name, Findings list) throws IOException {
        Table seen = CsvText.table(files.text(name, MOST_BYTES));
        UnitSystem units = FrameTables.units(root);
        Around around = new Around(dome);
        FrameTables frame = new FrameTables(root, dome);
        StockTables stock = new StockTables(root);
        SiteTables site = new SiteTables(root, units);
        switch (name) {
            case "tables/struts.csv" -> compare(frame.struts(), seen, 1, list);
            case "tables/panels.csv" -> compare(frame.panels(around), seen, 1, list);
            case "tables/hubs.csv" -> compare(frame.hubs(), seen, 1, list);
            case "tables/hub-schedule.csv" -> compare(frame.schedule(around, seen), seen, 1, list);
            case "tables/rails.csv" -> compare(stock.rails(units), seen, 1, list);
            case "tables/patterns.csv" -> compare(stock.patterns(covers), seen, 2, list);
            case "tables/sheets.csv" -> compare(stock.sheets(), seen, 6, list);
            case "tables/bars.csv" -> compare(stock.bars(), seen, 4, list);
            case "tables/bill.csv" -> compare(stock.bill(), seen, 2, list);
            case "tables/base.csv" -> compare(site.base(), seen, 2, list);
            case "tables/riser.csv" -> compare(site.riser(), seen, 2, list);
            case "tables/openings.csv" -> compare(site.openings(), seen, 4, list);
            default -> {}
        }
    }

    private static void compare(Table expected, Table seen, int keys, Findings list) {
        TableCheck.of(expected, seen, keys, Columns.same(), list);
    }
}

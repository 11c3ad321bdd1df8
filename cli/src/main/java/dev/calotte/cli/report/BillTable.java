package dev.calotte.cli.report;

import dev.calotte.bill.Bill;
import dev.calotte.bill.BillLine;
import dev.calotte.bill.Item;
import dev.calotte.units.NumberText;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** {@code bill.csv}: what is bought, then what is made. Totals, prices and masses hold the spares. */
final class BillTable {

    private BillTable() {}

    static String of(Bill bill) {
        Csv csv = new Csv()
                .row(
                        "item",
                        "mark",
                        "needed",
                        "spare",
                        "unit",
                        "length_mm",
                        "width_mm",
                        "area_m2",
                        "total_m",
                        "total_m2",
                        "price_each",
                        "price",
                        "mass_kg");
        for (BillLine line : bill.lines()) {
            csv.row(
                    line.item().word(),
                    line.mark(),
                    amount(line, line.needed()),
                    amount(line, line.spare()),
                    line.item() == Item.ROLL ? "m" : "pieces",
                    cell(line.lengthMm(), Tables::mm),
                    cell(line.widthMm(), Tables::mm),
                    cell(line.areaMm2(), Tables::squareMetres),
                    cell(line.totalLengthMm(), Tables::metres),
                    cell(line.totalAreaMm2(), Tables::squareMetres),
                    cell(line.priceEach(), BillTable::cents),
                    cell(line.price(), BillTable::cents),
                    cell(line.massKg(), kg -> NumberText.fixed(kg, 3)));
        }
        return csv.toString();
    }

    private static String amount(BillLine line, double amount) {
        return line.item() == Item.ROLL ? NumberText.fixed(amount, 3) : Tables.count((int) amount);
    }

    private static String cents(double price) {
        return NumberText.fixed(price, 2);
    }

    private static String cell(OptionalDouble value, DoubleFunction<String> text) {
        return value.isPresent() ? text.apply(value.getAsDouble()) : "";
    }
}

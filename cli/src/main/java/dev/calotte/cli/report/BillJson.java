package dev.calotte.cli.report;

import dev.calotte.bill.Bill;
import dev.calotte.bill.BillLine;
import dev.calotte.bill.Item;
import java.io.IOException;
import java.util.OptionalDouble;

/** What a dome takes in {@code dome.json}; numbers that are not known are left out. */
final class BillJson {

    private final JsonWriter json;

    BillJson(JsonWriter json) {
        this.json = json;
    }

    void write(Bill bill) throws IOException {
        json.objects("bill", bill.lines(), this::line);
    }

    private void line(BillLine line) throws IOException {
        json.text("item", line.item().word());
        json.text("mark", line.mark());
        json.number("needed", line.needed());
        json.number("spare", line.spare());
        json.text("unit", line.item() == Item.ROLL ? "m" : "pieces");
        number("length", line.lengthMm(), 1);
        number("width", line.widthMm(), 1);
        number("area", line.areaMm2(), 1e6);
        number("price", line.price(), 1);
        number("mass", line.massKg(), 1);
    }

    private void number(String key, OptionalDouble value, double unit) throws IOException {
        if (value.isPresent()) {
            json.fineNumber(key, value.getAsDouble() / unit);
        }
    }
}

package dev.calotte.check;

import java.util.List;

/**
 * What a record says that is used of a stock, and what it costs.
 *
 * @param place where in the record it stands
 * @param count how many pieces of stock are used, as it says
 * @param utilisation how much of them becomes parts, from 0 to 1
 * @param goal what is spent
 * @param used the pieces of stock
 * @param lines what the bill says of them; in the order of the stock
 */
public record RecordedSupply(
        String place, int count, double utilisation, Goal goal, List<Used> used, List<Line> lines) {

    /**
     * Copies the lists.
     *
     * @param place where in the record it stands
     * @param count how many pieces of stock are used
     * @param utilisation how much of them becomes parts
     * @param goal what is spent
     * @param used the pieces of stock
     * @param lines what the bill says of them
     */
    public RecordedSupply {
        used = List.copyOf(used);
        lines = List.copyOf(lines);
    }

    /**
     * How much is spent in a measure of steps, which may be another than that of the plan where there is one stock only.
     *
     * @param measure pieces, length, price or area
     * @return how much; areas in square metres
     */
    public double spent(String measure) {
        if (measure.equals(goal.measure())) {
            return goal.spent();
        }
        return switch (measure) {
            case "pieces" -> used.size();
            case "length" -> used.stream().mapToDouble(Used::length).sum();
            case "area" -> goal.measure().equals("area2") ? goal.spent() / 1e6 : Double.NaN;
            default -> Double.NaN;
        };
    }

    /**
     * What is spent, and what must be.
     *
     * @param measure price, pieces, length or area
     * @param spent how much, in money, pieces, millimetres or square millimetres
     * @param bound what any plan spends at least
     * @param proven whether no plan spends less
     * @param proof what shows the bound
     */
    public record Goal(String measure, double spent, double bound, boolean proven, String proof) {}

    /**
     * A bar, a sheet, or what is taken from a roll.
     *
     * @param stock which of the stocks it is
     * @param name what an outline is called, empty for all else
     * @param length along x, in millimetres
     * @param width along y; 0 for a bar
     * @param margin what is left unused along the edge
     * @param amount how large it is: in square millimetres, of a bar in millimetres
     * @param parts how much of it becomes parts
     */
    public record Used(
            int stock, String name, double length, double width, double margin, double amount, double parts) {}

    /**
     * A line of the bill.
     *
     * @param item bar, sheet, roll or offcut
     * @param mark the name of the cover, or of the outline
     * @param needed how many pieces, or metres, without spares
     * @param length in millimetres; not a number if nothing is said
     * @param width in millimetres; not a number if nothing is said
     * @param price of one piece or metre; not a number if it is not known
     */
    public record Line(String item, String mark, double needed, double length, double width, double price) {}
}

package dev.calotte.nest;

/** Which sides of parts that may be turned at will lie along or across the stock in a first plan. */
enum Manner {
    ANY,
    ALONG,
    ACROSS,
    LONGEST_ALONG;

    boolean takes(int quarter) {
        return switch (this) {
            case ANY -> true;
            case ALONG, LONGEST_ALONG -> quarter % 2 == 1;
            case ACROSS -> quarter % 2 == 0;
        };
    }
}

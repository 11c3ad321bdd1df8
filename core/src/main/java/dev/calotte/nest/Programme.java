package dev.calotte.nest;

/** The columns of a linear programme and what each costs for one. */
interface Programme {

    int count();

    double[] column(int column);

    double cost(int column);

    /** The largest cost. */
    double dearest();
}

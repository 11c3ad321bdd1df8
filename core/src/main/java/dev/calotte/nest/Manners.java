package dev.calotte.nest;

/** How parts are laid in a first plan: how far apart, and with which sides along or across the stock. */
record Manners(double spacing, Manner manner) {}

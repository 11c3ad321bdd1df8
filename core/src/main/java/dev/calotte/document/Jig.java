package dev.calotte.document;

import java.util.List;
import java.util.Optional;

/**
 * Something to print that helps to build, described by what it has to hold; its shape is the format's to find.
 * Millimetres and radians; angles in the plane are counter-clockwise seen from outside the dome.
 */
public sealed interface Jig {

    /**
     * What it is called, also in its file name.
     *
     * @return a mark of the characters {@code A-Z a-z 0-9 . _ -}, unique on its plate
     */
    String mark();

    /**
     * What it is for, for people.
     *
     * @return one line of text
     */
    String title();

    /**
     * How many are needed.
     *
     * @return at least 1
     */
    int count();

    /**
     * A strut at a hub.
     *
     * @param mark the mark of its kind
     * @param angleRad where it points
     * @param rightRad from its axis to the middle between it and its clockwise neighbour, at most a right angle
     * @param leftRad the same counter-clockwise
     * @param tiltRad how far it points below the plane that touches the sphere
     */
    record Arm(String mark, double angleRad, double rightRad, double leftRad, double tiltRad) {}

    /**
     * Flattened ends, which lie in the plane that touches the sphere.
     *
     * @param bendMm from the hub's axis to the bend, where the tilted part begins
     * @param widthMm how wide the flat is
     * @param halfThickMm half of what it is thick
     * @param boltMm the diameter of the bolts' holes
     * @param boltCircleMm from the hub's axis to the bolts; 0 for one bolt in the axis
     */
    record Flat(double bendMm, double widthMm, double halfThickMm, double boltMm, double boltCircleMm) {}

    /**
     * Where a cradle is cut off; a tongue of the middle then locks into it.
     *
     * @param atMm from the hub's axis, in plan
     * @param tongueMm how far the tongue reaches beyond
     */
    record Cut(double atMm, double tongueMm) {}

    /**
     * Holds all struts of a hub at their angles, outside up.
     *
     * @param mark the mark of the hub kind
     * @param title what it is for
     * @param strut the section of the struts
     * @param arms its struts, the first one marked
     * @param endMm from the hub's centre to the struts' ends, along the strut
     * @param flat the flattened ends, if they are that
     * @param reachMm from the hub's axis to the ends of the cradles, in plan
     * @param footMm from the axis of a cradle to the edges of its foot
     * @param cut where cradles are cut off to be printed by themselves, if the bed asks for that
     * @param turnRad how far it is turned on the bed
     */
    record Cradle(
            String mark,
            String title,
            StrutSection strut,
            List<Arm> arms,
            double endMm,
            Optional<Flat> flat,
            double reachMm,
            double footMm,
            Optional<Cut> cut,
            double turnRad)
            implements Jig {

        /**
         * Copies the list.
         *
         * @param mark the mark of the hub kind
         * @param title what it is for
         * @param strut the section of the struts
         * @param arms its struts
         * @param endMm from the centre to the ends
         * @param flat the flattened ends
         * @param reachMm to the ends of the cradles
         * @param footMm to the edges of their feet
         * @param cut where cradles are cut off
         * @param turnRad how far it is turned
         */
        public Cradle {
            arms = List.copyOf(arms);
        }

        @Override
        public int count() {
            return 1;
        }

        /**
         * The same, lying otherwise.
         *
         * @param rad how far it is turned
         * @return a copy
         */
        public Cradle turned(double rad) {
            return new Cradle(mark, title, strut, arms, endMm, flat, reachMm, footMm, cut, rad);
        }
    }

    /**
     * A hub that struts are put into, for scale models and light shades; printed in two halves.
     *
     * @param mark what it is called
     * @param title what it is for
     * @param count how many are needed
     * @param strut the section of the struts
     * @param arms its struts, the first one marked
     * @param endMm from the hub's centre to the struts' ends, along the strut
     * @param depthMm how deep struts sit in it
     */
    record Socket(
            String mark, String title, int count, StrutSection strut, List<Arm> arms, double endMm, double depthMm)
            implements Jig {

        /**
         * Copies the list.
         *
         * @param mark what it is called
         * @param title what it is for
         * @param count how many are needed
         * @param strut the section of the struts
         * @param arms its struts
         * @param endMm from the centre to the ends
         * @param depthMm how deep struts sit in it
         */
        public Socket {
            arms = List.copyOf(arms);
        }
    }

    /** What an angle gauge is laid against. */
    enum Use {
        /** A bent end: the flat, and the tube beyond the bend. */
        BEND,
        /** A saw's table and its tilted blade. */
        BEVEL,
        /** Two panels from inside. */
        SADDLE
    }

    /**
     * Shows an angle or holds something at it.
     *
     * @param mark what it is called
     * @param title what it is for
     * @param use what it is laid against
     * @param angleRad the bend from straight; the angle between table and blade; the angle between the panels inside
     *     the dome
     */
    record Gauge(String mark, String title, Use use, double angleRad) implements Jig {

        @Override
        public int count() {
            return 1;
        }
    }

    /**
     * A box whose end is the cut of a rail's end: the rail lies on its outer face in it, and a saw follows the box.
     *
     * @param mark what it is called
     * @param title what it is for
     * @param lyingMm how wide the rail lies, which is its depth in the dome
     * @param standingMm how high it stands, which is its width
     * @param start whether it is for the start of rails that run counter-clockwise round their panel, or for their end
     * @param bladeTiltRad the tilt of the cut from square to the face that it lies on
     * @param gaugeRad how far the cut is turned in the plan of the face that it lies on; above 0 the inside is shorter
     */
    record Mitre(
            String mark,
            String title,
            double lyingMm,
            double standingMm,
            boolean start,
            double bladeTiltRad,
            double gaugeRad)
            implements Jig {

        @Override
        public int count() {
            return 1;
        }
    }

    /**
     * Holds a flattened end while it is drilled.
     *
     * @param mark what it is called
     * @param title what it is for
     * @param flatMm how wide the flat is
     * @param thickMm how thick it is
     * @param holeMm the diameter of the hole
     * @param holeEdgeMm from the tube's end to the hole's centre
     */
    record Drill(String mark, String title, double flatMm, double thickMm, double holeMm, double holeEdgeMm)
            implements Jig {

        @Override
        public int count() {
            return 1;
        }
    }

    /**
     * Short seats with rising clearance, to find the one that fits.
     *
     * @param mark what it is called
     * @param title what it is for
     * @param strut the section of the struts
     * @param clearancesMm the clearance of each seat, on either side
     */
    record Fit(String mark, String title, StrutSection strut, List<Double> clearancesMm) implements Jig {

        /**
         * Copies the list.
         *
         * @param mark what it is called
         * @param title what it is for
         * @param strut the section of the struts
         * @param clearancesMm the clearance of each seat
         */
        public Fit {
            clearancesMm = List.copyOf(clearancesMm);
        }

        @Override
        public int count() {
            return 1;
        }
    }
}

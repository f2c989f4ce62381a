package slopewright.witness;

/** What fixes the distance of an indicator. */
public sealed interface Demand {

    /**
     * An eye height over the threshold: MEHT, the US threshold crossing height, or the nominal height of a T form.
     *
     * @param heightM metres
     */
    record EyeHeight(double heightM) implements Demand {
    }

    /**
     * The most demanding aeroplane and the clearance its wheels are to have (Fig 5-19 a).
     *
     * @param eyeToWheelM eye path to wheel path, metres
     * @param clearanceM clearance over the threshold, metres
     */
    record Aeroplane(double eyeToWheelM, double clearanceM) implements Demand {
    }

    /**
     * A US height group (pack 4.2).
     *
     * @param number 1 to 4
     */
    record HeightGroup(int number) implements Demand {
    }

    /**
     * Agreement with an electronic glide path (Fig 5-19 b; US 12-3.1.1).
     *
     * @param originM distance of its effective origin from the threshold, metres; NaN where the height is given
     * @param thresholdHeightM its height over the threshold, metres; NaN where the origin is given
     * @param pathDeg its angle, degrees
     * @param antennaMinM least eye-to-antenna height, metres
     * @param antennaMaxM greatest eye-to-antenna height, metres
     * @param eyeToWheelM eye path to wheel path of the most demanding aeroplane, metres; NaN for no check
     * @param minimumClearanceM clearance never to be undercut, metres
     * @param group US height group, 0 elsewhere
     */
    record GlidePath(double originM, double thresholdHeightM, double pathDeg, double antennaMinM, double antennaMaxM,
            double eyeToWheelM, double minimumClearanceM, int group) implements Demand {

        /** Mean eye-to-antenna height, metres. */
        public double antennaMeanM() {
            return (antennaMinM + antennaMaxM) / 2;
        }
    }

    /**
     * A helipad: eye over the hover point (US pack 7.20; AC 150/5390-2B 213).
     *
     * @param hoverM height of the skids over the TLOF, metres
     * @param eyeAboveSkidsM eye above the skids, metres
     */
    record Hover(double hoverM, double eyeAboveSkidsM) implements Demand {
    }
}

package slopewright.evaluation;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.model.ClearanceChoice;
import slopewright.model.GlidePathAid;
import slopewright.model.Helipad;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SettingsForm;
import slopewright.model.util.Projects;
import slopewright.siting.Approach;
import slopewright.siting.Input;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.descent.DescentSlope;

/** Makes siting requests of model elements. What the model does not say stays missing. */
public final class AidRequests {

    private AidRequests() {
    }

    /**
     * Makes the request of an approach aid where it stands.
     *
     * @param aid an aid in a runway end or approach direction
     * @return the request
     * @throws SitingException where the aid belongs to none
     */
    public static SitingRequest of(ApproachAid aid) {
        ApproachHost host = host(aid);
        SitingRequest.Builder builder = ofHost(host, side(aid));
        builder.set(Input.CHOSEN_CLEARANCE, aid.getChosenClearanceM());
        builder.clearance(clearance(aid.getClearance()));
        builder.set(Input.EYE_HEIGHT, aid.getTargetEyeHeightM()).set(Input.HEIGHT_GROUP, number(aid.getHeightGroup()));
        builder.set(Input.UNITS, number(aid.getUnitCount())).set(Input.AXIS_TURN, aid.getAxisTurnDeg());
        builder.set(Input.GROUND_SPEED, aid.getGroundSpeedKt()).set(Input.DESCENT, aid.getDescentFtmin());
        if (aid.getEquipment() != null) {
            builder.set(Input.LENS_ABOVE_GROUND, aid.getEquipment().getHeightAboveGroundM());
            builder.option(SitingRequest.OWN_SECTORS, aid.getEquipment().getSectors().isEmpty() ? null : "entered");
        }
        if (aid.getSlopeDeg() != null) {
            builder.set(Input.SLOPE, aid.getSlopeDeg());
        } else if (aid.getGroundSpeedKt() != null && aid.getDescentFtmin() != null) {
            builder.set(Input.SLOPE, null);
        } else if (aid.getAirSpeedKt() != null && aid.getDescentFtmin() != null) {
            builder.set(Input.SLOPE, DescentSlope.of(aid).orElseThrow().slopeDeg());
        }
        if (host.getGlidePath() != null) {
            builder.settings(aid.getSettings() == SettingsForm.GLIDE_PATH ? SitingRequest.Settings.GLIDE_PATH
                    : SitingRequest.Settings.STANDARD);
        }
        return builder.build();
    }

    /**
     * Returns the runway end or approach direction of an aid.
     *
     * @throws SitingException where it belongs to none
     */
    static ApproachHost host(ApproachAid aid) {
        return Projects.host(aid).orElseThrow(() -> new SitingException(Message.of("evaluation.refused.no-host")));
    }

    /**
     * Starts a request from a runway end or approach direction alone, for units on the left.
     *
     * @param host the runway end or approach direction
     * @return the request, to be completed
     * @throws SitingException where a profile cannot be used; the message says why
     */
    public static SitingRequest.Builder ofHost(ApproachHost host) {
        return ofHost(host, Side.LEFT);
    }

    /**
     * Starts a request from a runway end or approach direction alone.
     *
     * @param host the runway end or approach direction
     * @param side the side on which the units will stand
     * @return the request, to be completed
     * @throws SitingException where a profile cannot be used; the message says why
     */
    public static SitingRequest.Builder ofHost(ApproachHost host, Side side) {
        SitingRequest.Builder builder = SitingRequest.builder().approach(approach(host.getApproachType())).side(side);
        SiteGround ground = SiteGround.of(host, side);
        builder.ground(ground.profile().orElse(null), ground.source());
        ground.notes().forEach(builder::note);
        builder.set(Input.SLOPE, host.getDesiredSlopeDeg());
        putAeroplanes(builder, host);
        if (host instanceof RunwayEnd end) {
            putRunway(builder, end);
        }
        Projects.helipad(host).ifPresent(helipad -> putHelipad(builder, helipad, host));
        if (host.getGlidePath() != null) {
            putGlidePath(builder, host, host.getGlidePath());
        }
        return builder;
    }

    private static void putRunway(SitingRequest.Builder builder, RunwayEnd end) {
        Optional<Runway> runway = Projects.runway(end);
        builder.set(Input.RUNWAY_WIDTH, runway.map(Runway::getWidthM).orElse(null));
        builder.set(Input.CODE, number(runway.map(Runway::getCodeNumber).orElse(null)));
        builder.runwayProfile(Attempt.of(() -> RunwayProfiles.centreLine(end)).value().flatMap(found -> found).orElse(null));
    }

    private static Approach approach(ApproachType type) {
        return switch (type) {
            case VISUAL -> Approach.VISUAL;
            case NOT_STATED -> Approach.NOT_STATED;
            default -> Approach.INSTRUMENT;
        };
    }

    private static void putHelipad(SitingRequest.Builder builder, Helipad helipad, ApproachHost host) {
        builder.set(Input.HOVER_HEIGHT, helipad.getHoverHeightM()).set(Input.EYE_ABOVE_SKIDS, helipad.getEyeAboveSkidsM());
        Double landing = host instanceof ApproachDirection direction ? direction.getTrueBearingDeg() : null;
        builder.option(SitingRequest.DESCRIBED_PLACE, "helipad");
        builder.set(Input.SAFETY_AREA_WIDTH, helipad.getSafetyAreaWidthM());
        PadArea.put(builder, helipad, landing);
    }

    private static void putGlidePath(SitingRequest.Builder builder, ApproachHost host, GlidePathAid path) {
        builder.set(Input.REFERENCE_DATUM_HEIGHT, path.getReferenceDatumHeightM()).set(Input.GLIDE_PATH_ANGLE, path.getPathAngleDeg());
        builder.set(Input.GLIDE_PATH_ORIGIN, path.getOriginAlongM());
        if (host instanceof RunwayEnd end) {
            builder.runwayProfile(RunwayProfiles.centreLine(end).orElse(null));
        }
        builder.set(Input.EYE_TO_ANTENNA_MIN, extreme(host, true)).set(Input.EYE_TO_ANTENNA_MAX, extreme(host, false));
    }

    private static Double extreme(ApproachHost host, boolean least) {
        var heights = host.getRegularGroups().stream().map(AeroplaneGroup::getEyeToAntennaM).filter(height -> height != null)
                .mapToDouble(Double::doubleValue);
        OptionalDouble found = least ? heights.min() : heights.max();
        return found.isPresent() ? Double.valueOf(found.getAsDouble()) : null;
    }

    private static void putAeroplanes(SitingRequest.Builder builder, ApproachHost host) {
        mostDemanding(host).ifPresent(group -> builder.set(Input.EYE_TO_WHEEL, group.getEyeToWheelM()));
    }

    /** Returns the aeroplane group in regular use with the greatest eye-to-wheel height, empty where none has one. */
    public static Optional<AeroplaneGroup> mostDemanding(ApproachHost host) {
        return host.getRegularGroups().stream().filter(group -> group.getEyeToWheelM() != null)
                .max(Comparator.comparing(AeroplaneGroup::getEyeToWheelM));
    }

    static Side side(ApproachAid aid) {
        return Side.valueOf(aid.getSide().getName());
    }

    private static SitingRequest.Clearance clearance(ClearanceChoice choice) {
        return SitingRequest.Clearance.valueOf(choice.getName());
    }

    private static Double number(Integer count) {
        return count == null ? null : Double.valueOf(count);
    }
}

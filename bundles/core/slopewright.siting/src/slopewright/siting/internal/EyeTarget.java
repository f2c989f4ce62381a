package slopewright.siting.internal;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Lengths;
import slopewright.siting.Input;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.standards.CrossingHeightTable;
import slopewright.standards.WheelClearanceTable;

/** Works out which eye height over the threshold a layout must reach. */
final class EyeTarget {

    private EyeTarget() {
    }

    /**
     * Returns the eye height: the one that was entered, that of the height group, or aeroplane plus clearance.
     *
     * @throws SitingException where none can be had; the message names the inputs
     */
    static double eyeHeightM(SitingRequest request, RuleReader reader) {
        if (request.has(Input.EYE_HEIGHT)) {
            double entered = request.need(Input.EYE_HEIGHT);
            if (entered <= 0) {
                throw new SitingException("the eye height over the threshold (eye-height-m) must be more than zero");
            }
            return entered;
        }
        Optional<CrossingHeightTable> groups = reader.rules().crossingHeight();
        if (request.has(Input.HEIGHT_GROUP)) {
            return ofGroup(request, reader, groups);
        }
        if (!request.has(Input.EYE_TO_WHEEL)) {
            throw groups.isPresent() ? SitingException.missing(Input.EYE_HEIGHT, Input.HEIGHT_GROUP, Input.EYE_TO_WHEEL)
                    : SitingException.missing(Input.EYE_TO_WHEEL, Input.EYE_HEIGHT);
        }
        return request.need(Input.EYE_TO_WHEEL) + clearanceM(request, reader);
    }

    private static double ofGroup(SitingRequest request, RuleReader reader, Optional<CrossingHeightTable> groups) {
        int number = (int) Math.round(request.need(Input.HEIGHT_GROUP));
        if (groups.isEmpty()) {
            throw new SitingException("rule set " + reader.rules().key() + " has no height groups; give the eye-to-wheel height instead");
        }
        CrossingHeightTable.Group group = groups.get().group(number)
                .orElseThrow(() -> new SitingException("there is no height group " + number + "; known are 1 to " + groups.get().groups()
                        .size()));
        reader.use("crossing-height-ft", group.crossingHeightFt(), "ft", groups.get().citation());
        return Lengths.feetToMetres(group.crossingHeightFt());
    }

    private static double clearanceM(SitingRequest request, RuleReader reader) {
        double eyeToWheel = request.need(Input.EYE_TO_WHEEL);
        Optional<WheelClearanceTable> table = reader.rules().wheelClearance();
        if (request.clearance() == SitingRequest.Clearance.CHOSEN) {
            double chosen = request.need(Input.CHOSEN_CLEARANCE);
            table.flatMap(one -> one.group(eyeToWheel)).filter(group -> chosen < group.desiredM()).ifPresent(group -> reader.note(
                    String.format(Locale.ROOT,
                            "The chosen wheel clearance of %.2f m is less than the desired %.2f m: an aeronautical study must"
                            + " accept it%s.", chosen, group.desiredM(),
                            chosen < group.minimumM() ? String.format(Locale.ROOT, ", and it is less than the minimum of %.2f m",
                                    group.minimumM())
                                    : "")));
            return chosen;
        }
        if (table.isEmpty()) {
            throw new SitingException("rule set " + reader.rules().key()
                    + " has no table of wheel clearances; give the clearance in metres, the eye"
                    + " height over the threshold (eye-height-m) or the height group (height-group)");
        }
        WheelClearanceTable.Group group = table.get().group(eyeToWheel).orElseThrow(() -> new SitingException(String.format(Locale.ROOT,
                "an eye-to-wheel height of %.2f m is outside the table of wheel clearances (0 m up to 14 m); give the clearance in metres",
                        eyeToWheel)));
        boolean minimum = request.clearance() == SitingRequest.Clearance.MINIMUM;
        double clearance = minimum ? group.minimumM() : group.desiredM();
        reader.use(minimum ? "wheel-clearance-minimum-m" : "wheel-clearance-desired-m", clearance, "m", table.get().citation());
        if (minimum) {
            reader.note(String.format(Locale.ROOT,
                    "The minimum wheel clearance of %.2f m is used instead of the desired %.2f m: an aeronautical study must accept it.",
                    group.minimumM(), group.desiredM()));
        }
        return clearance;
    }

    /** Returns the wheel clearance that an eye height leaves, empty where no aeroplane was given. */
    static OptionalDouble wheelClearanceM(SitingRequest request, double eyeHeightM) {
        return request.number(Input.EYE_TO_WHEEL).map(height -> OptionalDouble.of(eyeHeightM - height)).orElse(OptionalDouble.empty());
    }

    /** Notes how a wheel clearance compares with both columns of the table, where it did not follow from one of them. */
    static void noteVerdict(SitingRequest request, RuleReader reader, double clearanceM) {
        Optional<WheelClearanceTable> table = reader.rules().wheelClearance();
        Optional<WheelClearanceTable.Group> group = table.flatMap(one -> request.number(Input.EYE_TO_WHEEL).flatMap(one::group));
        group.ifPresent(found -> {
            reader.use("wheel-clearance-desired-m", found.desiredM(), "m", table.orElseThrow().citation());
            reader.use("wheel-clearance-minimum-m", found.minimumM(), "m", table.orElseThrow().citation());
            String verdict = clearanceM >= found.desiredM() ? "meets both" : clearanceM >= found.minimumM()
                    ? "is under the desired one and meets the minimum, which an aeronautical study must accept"
                            : found.lightAeroplaneM().filter(light -> clearanceM >= light).isPresent()
                                    ? "is under the minimum, which only a runway used mainly by light aeroplanes without turbojets may do"
                                    : "is under the minimum: not acceptable";
            reader.note(String.format(Locale.ROOT,
                    "The wheel clearance of %.2f m against the desired %.2f m and the minimum %.2f m: it %s.",
                    clearanceM, found.desiredM(), found.minimumM(), verdict));
        });
    }
}

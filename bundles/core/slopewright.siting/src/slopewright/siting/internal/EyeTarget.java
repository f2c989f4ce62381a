package slopewright.siting.internal;

import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.messages.Words;
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
     * @return metres over the threshold
     * @throws SitingException where none can be had; the message names the inputs
     */
    static double eyeHeightM(SitingRequest request, RuleReader reader) {
        if (request.has(Input.EYE_HEIGHT)) {
            return enteredM(request);
        }
        Optional<CrossingHeightTable> groups = reader.rules().crossingHeight();
        if (request.has(Input.HEIGHT_GROUP)) {
            return ofGroup(request, reader, groups);
        }
        if (!request.has(Input.EYE_TO_WHEEL)) {
            throw groups.isPresent() ? SitingException.missing(Input.EYE_HEIGHT, Input.HEIGHT_GROUP, Input.EYE_TO_WHEEL)
                    : SitingException.missing(Input.EYE_TO_WHEEL, Input.EYE_HEIGHT);
        }
        return ofAeroplaneM(request, reader);
    }

    /** Returns the eye height that was entered, metres. */
    static double enteredM(SitingRequest request) {
        double entered = request.need(Input.EYE_HEIGHT);
        if (entered <= 0) {
            throw new SitingException(Message.of("siting.refused.more-than-zero", Input.EYE_HEIGHT.message()));
        }
        return entered;
    }

    /** Returns whether the eye height follows from the aeroplane and its clearance, which then has its own note. */
    static boolean isOfAeroplane(SitingRequest request) {
        return !request.has(Input.EYE_HEIGHT) && !request.has(Input.HEIGHT_GROUP) && request.has(Input.EYE_TO_WHEEL);
    }

    private static double ofGroup(SitingRequest request, RuleReader reader, Optional<CrossingHeightTable> groups) {
        int number = (int) Math.round(request.need(Input.HEIGHT_GROUP));
        if (groups.isEmpty()) {
            throw new SitingException(Message.of("siting.refused.no-height-groups", reader.rules().descriptor().name()));
        }
        CrossingHeightTable.Group group = groups.get().group(number).orElseThrow(() -> new SitingException(Message.of(
                "siting.refused.height-group", Words.count(number), Words.count(groups.get().groups().size()))));
        reader.use("crossing-height-ft", group.crossingHeightFt(), "ft", groups.get().citation());
        return Lengths.feetToMetres(group.crossingHeightFt());
    }

    /** Returns the height of the eye over the wheels plus the clearance that counts, metres. */
    static double ofAeroplaneM(SitingRequest request, RuleReader reader) {
        return request.need(Input.EYE_TO_WHEEL) + clearanceM(request, reader);
    }

    private static double clearanceM(SitingRequest request, RuleReader reader) {
        double eyeToWheel = request.need(Input.EYE_TO_WHEEL);
        Optional<WheelClearanceTable> table = reader.rules().wheelClearance();
        if (request.clearance() == SitingRequest.Clearance.CHOSEN) {
            double chosen = request.need(Input.CHOSEN_CLEARANCE);
            table.flatMap(found -> found.group(eyeToWheel)).filter(group -> chosen < group.desiredM())
                    .ifPresent(group -> reader.note(chosen < group.minimumM()
                            ? Message.of("siting.note.clearance-under-minimum", Words.m(chosen), Words.m(group.desiredM()),
                                    Words.m(group.minimumM()))
                            : Message.of("siting.note.clearance-under-desired", Words.m(chosen), Words.m(group.desiredM()))));
            return chosen;
        }
        if (table.isEmpty()) {
            throw new SitingException(Message.of("siting.refused.no-clearances", reader.rules().descriptor().name(),
                    Input.CHOSEN_CLEARANCE.message(), Input.EYE_HEIGHT.message(), Input.HEIGHT_GROUP.message()));
        }
        WheelClearanceTable.Group group = table.get().group(eyeToWheel).orElseThrow(() -> new SitingException(Message.of(
                "siting.refused.clearance-outside", Words.m(eyeToWheel), Words.m(table.get().belowM()))));
        boolean minimum = request.clearance() == SitingRequest.Clearance.MINIMUM;
        double clearance = minimum ? group.minimumM() : group.desiredM();
        reader.use(minimum ? "wheel-clearance-minimum-m" : "wheel-clearance-desired-m", clearance, "m",
                minimum ? table.get().citation() : table.get().desired());
        if (minimum) {
            reader.note(Message.of("siting.note.minimum-clearance", Words.m(group.minimumM()), Words.m(group.desiredM())));
        }
        return clearance;
    }

    /** Returns the eye height that the minimum clearance of the aeroplane asks for, metres; empty where no table or no aeroplane says. */
    static OptionalDouble leastEyeHeightM(SitingRequest request, RuleReader reader) {
        Optional<WheelClearanceTable> table = reader.rules().wheelClearance();
        Optional<WheelClearanceTable.Group> group = table.flatMap(found -> request.number(Input.EYE_TO_WHEEL).flatMap(found::group));
        if (group.isEmpty()) {
            return OptionalDouble.empty();
        }
        reader.use("wheel-clearance-minimum-m", group.get().minimumM(), "m", table.orElseThrow().citation());
        return OptionalDouble.of(request.need(Input.EYE_TO_WHEEL) + group.get().minimumM());
    }

    /** Returns the wheel clearance that an eye height leaves, empty where no aeroplane was given. */
    static OptionalDouble wheelClearanceM(SitingRequest request, double eyeHeightM) {
        return request.number(Input.EYE_TO_WHEEL).map(height -> OptionalDouble.of(eyeHeightM - height)).orElse(OptionalDouble.empty());
    }

    /** Notes how a wheel clearance compares with both columns of the table, where it did not follow from one of them. */
    static void noteVerdict(SitingRequest request, RuleReader reader, double clearanceM) {
        Optional<WheelClearanceTable> table = reader.rules().wheelClearance();
        Optional<WheelClearanceTable.Group> group = table.flatMap(found -> request.number(Input.EYE_TO_WHEEL).flatMap(found::group));
        group.ifPresent(found -> {
            reader.use("wheel-clearance-desired-m", found.desiredM(), "m", table.orElseThrow().desired());
            reader.use("wheel-clearance-minimum-m", found.minimumM(), "m", table.orElseThrow().citation());
            reader.note(Message.of("siting.note.clearance." + verdict(found, clearanceM), Words.m(clearanceM), Words.m(found.desiredM()),
                    Words.m(found.minimumM())));
        });
    }

    private static String verdict(WheelClearanceTable.Group group, double clearanceM) {
        if (clearanceM >= group.desiredM()) {
            return "both";
        }
        if (clearanceM >= group.minimumM()) {
            return "minimum";
        }
        return group.lightAeroplaneM().filter(light -> clearanceM >= light).isPresent() ? "light" : "under";
    }
}

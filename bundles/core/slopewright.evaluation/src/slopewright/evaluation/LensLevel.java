package slopewright.evaluation;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Profile;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.EquipmentType;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Input;
import slopewright.siting.SitingRequest;

/**
 * How high the lenses of a proposal stand: above the ground as the units that stand there or the equipment have it, or above the threshold
 * where no ground is known.
 *
 * @param source          where it comes from
 * @param aboveGroundM    above the ground where each unit stands, metres; empty where it is not known
 * @param overThresholdM  above the threshold or TLOF, metres; empty where the height above the ground counts
 * @param of              what it is taken from, for people; empty where nothing is known
 */
public record LensLevel(Source source, OptionalDouble aboveGroundM, OptionalDouble overThresholdM, String of) {

    /** Where the height of a lens comes from. */
    public enum Source {
        /** The height above ground of the equipment type. */
        EQUIPMENT,
        /** The units that stand there. */
        STANDING_UNITS,
        /** Nobody knows: the lens is taken on the ground. */
        UNKNOWN
    }

    private static final LensLevel NONE = new LensLevel(Source.UNKNOWN, OptionalDouble.empty(), OptionalDouble.empty(), "");

    /** Refuses missing parts. */
    public LensLevel {
        Objects.requireNonNull(source);
        Objects.requireNonNull(of);
    }

    /**
     * Reads how high the lenses of an aid stand.
     *
     * @param aid     an aid in a runway end or approach direction, with units or without
     * @param request its request, for the ground
     * @return the level
     */
    public static LensLevel of(ApproachAid aid, SitingRequest request) {
        List<LightUnit> units = aid.getUnits();
        String name = Projects.label(aid);
        if (!units.isEmpty() && units.stream().allMatch(unit -> unit.getHeightAboveGroundM() != null)) {
            return new LensLevel(Source.STANDING_UNITS, units.stream().mapToDouble(LightUnit::getHeightAboveGroundM).average(),
                    OptionalDouble.empty(), name);
        }
        EquipmentType type = aid.getEquipment();
        if (type != null && type.getHeightAboveGroundM() != null) {
            return new LensLevel(Source.EQUIPMENT, OptionalDouble.of(type.getHeightAboveGroundM()), OptionalDouble.empty(),
                    Projects.label(type));
        }
        Optional<Double> datum = Projects.host(aid).flatMap(AidLayouts::datumM);
        boolean placed = datum.isPresent() && !units.isEmpty()
                && units.stream().allMatch(unit -> unit.getLensElevationM() != null && unit.getAlongM() != null);
        if (!placed) {
            return NONE;
        }
        Optional<Profile> ground = request.ground()
                .filter(found -> units.stream().allMatch(unit -> found.covers(unit.getAlongM())));
        if (ground.isPresent()) {
            return new LensLevel(Source.STANDING_UNITS, units.stream().mapToDouble(unit -> unit.getLensElevationM() - datum.get()
                    - ground.get().heightAt(unit.getAlongM())).average(), OptionalDouble.empty(), name);
        }
        return new LensLevel(Source.STANDING_UNITS, OptionalDouble.empty(),
                units.stream().mapToDouble(unit -> unit.getLensElevationM() - datum.get()).average(), name);
    }

    /**
     * Finds how high the lenses of a family would stand at a place: as those of the aid of the family that stands there, else as its
     * equipment in the project, else as those of the first aid there.
     *
     * @param host      the runway end or approach direction
     * @param familyKey the family
     * @param request   the request there, for the ground
     * @return the level
     */
    public static LensLevel at(ApproachHost host, String familyKey, SitingRequest request) {
        Optional<ApproachAid> standing = host.getAids().stream().filter(aid -> familyKey.equals(aid.getFamilyKey())).findFirst();
        Optional<EquipmentType> type = Families.find(familyKey).flatMap(family -> Projects.project(host)
                .flatMap(project -> FamilyEquipment.in(project, family).findFirst()));
        if (standing.isEmpty() && type.isPresent() && type.get().getHeightAboveGroundM() != null) {
            return new LensLevel(Source.EQUIPMENT, OptionalDouble.of(type.get().getHeightAboveGroundM()), OptionalDouble.empty(),
                    Projects.label(type.get()));
        }
        return standing.or(() -> host.getAids().stream().findFirst()).map(aid -> of(aid, request)).orElse(NONE);
    }

    /** Returns a request for lenses at this level, on the ground that the request has. */
    public SitingRequest in(SitingRequest request) {
        if (aboveGroundM.isPresent()) {
            return request.toBuilder().set(Input.LENS_ABOVE_GROUND, aboveGroundM.getAsDouble()).build();
        }
        if (overThresholdM.isPresent() && request.ground().isEmpty()) {
            return request.toBuilder().set(Input.LENS_ABOVE_GROUND, null).set(Input.GROUND_SLOPE, null)
                    .set(Input.LENS_HEIGHT, overThresholdM.getAsDouble()).build();
        }
        return request;
    }

    /** Returns what was taken, in a sentence. */
    public Message message() {
        if (source == Source.UNKNOWN) {
            return Message.of("proposal.lens-unknown");
        }
        if (aboveGroundM.isEmpty()) {
            return Message.of("proposal.lens-over-threshold", Words.m(overThresholdM.orElseThrow()), Words.name(of));
        }
        return Message.of(source == Source.EQUIPMENT ? "proposal.lens-of-equipment" : "proposal.lens-of-units",
                Words.m(aboveGroundM.getAsDouble()), Words.name(of));
    }
}

package slopewright.siting;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import slopewright.geometry.Profile;
import slopewright.messages.Message;

/** What a siting starts from. Immutable; made by a {@link Builder}. */
public final class SitingRequest {

    /** Name of the option that says that the sectors of the unit in hand were entered, so that none need be remembered. */
    public static final String OWN_SECTORS = "own-sectors";
    /** Option of a request about a place that a project describes: what is missing is not known there, and nothing is taken for it. */
    public static final String DESCRIBED_PLACE = "described-place";

    /** Which column of the wheel clearance table counts. */
    public enum Clearance {
        /** The desired clearance. */
        DESIRED,
        /** The minimum that an aeronautical study may accept. */
        MINIMUM,
        /** A number of the user's, {@link Input#CHOSEN_CLEARANCE}. */
        CHOSEN
    }

    /** Which form of settings a row gets. */
    public enum Settings {
        /** Standard. */
        STANDARD,
        /** Widened to agree with an electronic glide path. */
        GLIDE_PATH
    }

    private final Map<Input, Double> numbers;
    private final Map<String, String> options;
    private final Approach approach;
    private final Clearance clearance;
    private final Optional<Settings> settings;
    private final Side side;
    private final Optional<Profile> ground;
    private final GroundSource profileSource;
    private final Optional<Profile> runwayProfile;
    private final List<Message> notes;
    private final List<Double> barDistancesM;
    private final List<Double> barSettingsDeg;

    private SitingRequest(Builder builder) {
        numbers = new EnumMap<>(Input.class);
        numbers.putAll(builder.numbers);
        options = Map.copyOf(builder.options);
        approach = builder.approach;
        clearance = builder.clearance;
        settings = Optional.ofNullable(builder.settings);
        side = builder.side;
        ground = Optional.ofNullable(builder.ground);
        profileSource = builder.profileSource;
        runwayProfile = Optional.ofNullable(builder.runwayProfile);
        notes = List.copyOf(builder.notes);
        barDistancesM = List.copyOf(builder.barDistancesM);
        barSettingsDeg = List.copyOf(builder.barSettingsDeg);
    }

    /** Starts a request. */
    public static Builder builder() {
        return new Builder();
    }

    /** Starts a request from this one. */
    public Builder toBuilder() {
        Builder builder = new Builder();
        builder.numbers.putAll(numbers);
        builder.options.putAll(options);
        builder.notes.addAll(notes);
        return builder.approach(approach).clearance(clearance).settings(settings.orElse(null)).side(side)
                .ground(ground.orElse(null), profileSource).runwayProfile(runwayProfile.orElse(null)).bars(barDistancesM, barSettingsDeg);
    }

    /** Returns a number, empty where it was not given. */
    public Optional<Double> number(Input input) {
        return Optional.ofNullable(numbers.get(input));
    }

    /**
     * Returns a number that must be there.
     *
     * @throws SitingException where it was not given; the message names it
     */
    public double need(Input input) {
        return number(input).orElseThrow(() -> SitingException.missing(input));
    }

    /** Returns whether a number was given. */
    public boolean has(Input input) {
        return numbers.containsKey(input);
    }

    /** Returns a choice of a family's own, such as {@code layout}; empty where none was made. */
    public Optional<String> option(String name) {
        return Optional.ofNullable(options.get(name));
    }

    /** Returns how the runway or helipad is approached. */
    public Approach approach() {
        return approach;
    }

    /** Returns which wheel clearance counts. */
    public Clearance clearance() {
        return clearance;
    }

    /** Returns the form of the settings, empty where it follows from the glide path. */
    public Optional<Settings> settings() {
        return settings;
    }

    /** Returns the side of the runway. */
    public Side side() {
        return side;
    }

    /** Returns the measured ground along the units above the threshold, empty where none was measured. */
    public Optional<Profile> ground() {
        return ground;
    }

    /** Returns from what the height of the lenses over the threshold follows. */
    public GroundSource groundSource() {
        if (ground.isPresent()) {
            return profileSource;
        }
        return has(Input.LENS_HEIGHT) ? GroundSource.LENS_HEIGHT : has(Input.GROUND_SLOPE) ? GroundSource.UNIFORM_SLOPE
                : GroundSource.LEVEL;
    }

    /** Returns the profile of the runway's centre line above the threshold, places counted from the threshold; empty where unknown. */
    public Optional<Profile> runwayProfile() {
        return runwayProfile;
    }

    /** Returns what a reader of the layout must know of how the request was made. */
    public List<Message> notes() {
        return notes;
    }

    /** Returns the distances of given bars, near to far; empty where they are solved. */
    public List<Double> barDistancesM() {
        return barDistancesM;
    }

    /** Returns the settings of given bars, near to far; empty where they follow from the slope. */
    public List<Double> barSettingsDeg() {
        return barSettingsDeg;
    }

    /** Returns whether the layout is given instead of solved. */
    public boolean isGiven() {
        return has(Input.DISTANCE) || !barDistancesM.isEmpty();
    }

    /** Returns whether it is about a helipad. */
    public boolean atHelipad() {
        return has(Input.HOVER_HEIGHT) || has(Input.EYE_ABOVE_SKIDS) || has(Input.SAFETY_AREA_WIDTH);
    }

    /** Returns whether an electronic glide path was described. */
    public boolean hasGlidePath() {
        return has(Input.GLIDE_PATH_ORIGIN) || has(Input.REFERENCE_DATUM_HEIGHT);
    }

    /** Collects the parts of a request. */
    public static final class Builder {

        private final Map<Input, Double> numbers = new EnumMap<>(Input.class);
        private final Map<String, String> options = new LinkedHashMap<>();
        private Approach approach = Approach.NOT_STATED;
        private Clearance clearance = Clearance.DESIRED;
        private Settings settings;
        private Side side = Side.LEFT;
        private Profile ground;
        private GroundSource profileSource = GroundSource.TYPED_PROFILE;
        private Profile runwayProfile;
        private final List<Message> notes = new ArrayList<>();
        private List<Double> barDistancesM = new ArrayList<>();
        private List<Double> barSettingsDeg = new ArrayList<>();

        private Builder() {
        }

        /**
         * Sets a number; null takes it away.
         *
         * @throws SitingException where it is not finite, or a count is not whole
         */
        public Builder set(Input input, Double value) {
            if (value == null) {
                numbers.remove(input);
            } else if (input.kind() == Input.Kind.COUNT && Double.isFinite(value) && value != Math.rint(value)) {
                throw new SitingException(Message.of("siting.refused.whole", input.message()));
            } else if (Double.isFinite(value)) {
                numbers.put(input, value);
            } else {
                throw new SitingException(Message.of("siting.refused.finite", input.message()));
            }
            return this;
        }

        /** Makes a choice of a family's own; null takes it back. */
        public Builder option(String name, String value) {
            if (value == null) {
                options.remove(name);
            } else {
                options.put(name, value);
            }
            return this;
        }

        /** Says how the runway or helipad is approached. */
        public Builder approach(Approach value) {
            approach = Objects.requireNonNull(value);
            return this;
        }

        /** Chooses the wheel clearance. */
        public Builder clearance(Clearance value) {
            clearance = Objects.requireNonNull(value);
            return this;
        }

        /** Chooses the form of the settings; null leaves it to the glide path. */
        public Builder settings(Settings value) {
            settings = value;
            return this;
        }

        /** Chooses the side of the runway. */
        public Builder side(Side value) {
            side = Objects.requireNonNull(value);
            return this;
        }

        /** Gives the measured ground along the units as it was entered, heights above the threshold; null for none. */
        public Builder ground(Profile value) {
            return ground(value, GroundSource.TYPED_PROFILE);
        }

        /** Gives the measured ground along the units, heights above the threshold, and where it comes from; null for none. */
        public Builder ground(Profile value, GroundSource source) {
            ground = value;
            profileSource = Objects.requireNonNull(source);
            return this;
        }

        /** Gives the profile of the runway's centre line above the threshold, places counted from the threshold; null for none. */
        public Builder runwayProfile(Profile value) {
            runwayProfile = value;
            return this;
        }

        /** Adds what a reader of the layout must know of how the request was made. */
        public Builder note(Message note) {
            notes.add(note);
            return this;
        }

        /** Gives bars that are laid out already, near to far; an empty list leaves them to the solution. */
        public Builder bars(List<Double> distancesM, List<Double> settingsDeg) {
            barDistancesM = List.copyOf(distancesM);
            barSettingsDeg = List.copyOf(settingsDeg);
            return this;
        }

        /** Makes the request. */
        public SitingRequest build() {
            return new SitingRequest(this);
        }
    }
}

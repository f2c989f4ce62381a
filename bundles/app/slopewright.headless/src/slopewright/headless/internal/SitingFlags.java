package slopewright.headless.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import slopewright.geometry.Decimals;
import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.siting.Approach;
import slopewright.siting.Input;
import slopewright.siting.Side;
import slopewright.siting.SitingRequest;

/** The options that describe a siting, made from the list of inputs, so that a new input is an option at once. */
final class SitingFlags {

    private static final List<String> WORDS = List.of("family", "rule-set", "approach", "clearance", "settings", "side",
            "bar-distances-m", "bar-settings-deg", "layout", "tradition", "red-limit-deg", "pulse-form");
    private static final List<String> OWN_CHOICES = List.of("layout", "tradition", "red-limit-deg", "pulse-form");

    private static final MessageRenderer ENGLISH = MessageRenderer.of(Locale.ENGLISH);

    private SitingFlags() {
    }

    static void addTo(CommandSpec spec) {
        add(spec, "family", "KEY", "family of indicators; see 'families'", text -> text);
        add(spec, "rule-set", "KEY", "rule set, with its edition after a colon where not the default; see 'rule-sets'", text -> text);
        add(spec, "approach", "KIND", "visual, instrument, non-precision or precision", SitingFlags::approach);
        add(spec, "clearance", "WHICH", "wheel clearance: desired, minimum, or metres", SitingFlags::clearance);
        add(spec, "settings", "FORM", "standard or glide-path", SitingFlags::settings);
        add(spec, "side", "SIDE", "left, right or both, seen in the landing direction", SitingFlags::side);
        add(spec, "bar-distances-m", "NEAR,[MIDDLE,]FAR", "given bars: distances from the threshold", text -> list(text, Lengths::parse));
        add(spec, "bar-settings-deg", "NEAR,[MIDDLE,]FAR", "given bars: settings", text -> list(text, Decimals::parse));
        add(spec, "layout", "NAME", "standard, reduced or enlarged, where the rule set has it", text -> text);
        add(spec, "tradition", "NAME", "two-bar: 'tradition' for 2.5 and 3.0 degrees on a 3 degree path", text -> text);
        add(spec, "pulse-form", "NAME", "pulsating: rate (AIM) or length (pulse-light specification)", text -> text);
        add(spec, "red-limit-deg", "DEG", "T form: raised top of the red sector", text -> String.valueOf(Decimals.parse(text)));
        for (Input input : Input.values()) {
            if (input != Input.CHOSEN_CLEARANCE) {
                add(spec, input.key(), unit(input), ENGLISH.write(input.term()), converter(input));
            }
        }
    }

    private static void add(CommandSpec spec, String name, String label, String description, ITypeConverter<?> converter) {
        spec.addOption(OptionSpec.builder("--" + name).type(Object.class).paramLabel(label).description(description).arity("1")
                .converters(checked(converter)).build());
    }

    private static ITypeConverter<Object> checked(ITypeConverter<?> converter) {
        return text -> {
            try {
                return converter.convert(text);
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(e.getMessage());
            }
        };
    }

    private static String unit(Input input) {
        return switch (input.kind()) {
            case LENGTH -> "M";
            case ANGLE -> "DEG";
            case COUNT -> "N";
            case PERCENT -> "PERCENT";
            case SPEED -> "KT";
            case DESCENT -> "FT/MIN";
        };
    }

    private static ITypeConverter<Double> converter(Input input) {
        return switch (input.kind()) {
            case LENGTH -> Lengths::parse;
            case COUNT -> text -> {
                double number = Decimals.parse(text);
                if (number != Math.rint(number) || number < 1) {
                    throw new IllegalArgumentException("'" + text + "' is no whole number of 1 or more");
                }
                if (input == Input.CODE && number > 4) {
                    throw new IllegalArgumentException("a code number is 1, 2, 3 or 4, not " + text);
                }
                return number;
            };
            default -> Decimals::parse;
        };
    }

    private static List<Double> list(String text, Function<String, Double> parser) {
        return Arrays.stream(text.split(",", -1)).map(parser).toList();
    }

    private static String approach(String text) {
        if (!List.of("visual", "instrument", "non-precision", "precision").contains(text)) {
            throw new IllegalArgumentException("'" + text + "' is none of visual, instrument, non-precision, precision");
        }
        return text;
    }

    private static Object clearance(String text) {
        return switch (text) {
            case "desired" -> SitingRequest.Clearance.DESIRED;
            case "minimum" -> SitingRequest.Clearance.MINIMUM;
            default -> Lengths.parse(text);
        };
    }

    private static SitingRequest.Settings settings(String text) {
        return switch (text) {
            case "standard" -> SitingRequest.Settings.STANDARD;
            case "glide-path" -> SitingRequest.Settings.GLIDE_PATH;
            default -> throw new IllegalArgumentException("'" + text + "' is neither standard nor glide-path");
        };
    }

    private static Side side(String text) {
        try {
            return Side.valueOf(text.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("'" + text + "' is none of left, right, both", e);
        }
    }

    static Optional<String> text(CommandSpec spec, String name) {
        return Optional.ofNullable((String) value(spec, name));
    }

    private static Object value(CommandSpec spec, String name) {
        ParseResult parsed = spec.commandLine().getParseResult();
        return parsed.matchedOptionValue("--" + name, null);
    }

    /**
     * Puts what was given into a request.
     *
     * @param spec    the command after its words were read
     * @param builder the request, maybe with what a file said already
     * @param notes   receives what was taken for granted
     */
    @SuppressWarnings("unchecked")
    static void apply(CommandSpec spec, SitingRequest.Builder builder, List<String> notes, boolean fromFile) {
        refuseContradictions(spec);
        replaceWhatTheFileSays(spec, builder, notes);
        for (Input input : Input.values()) {
            if (input != Input.CHOSEN_CLEARANCE && value(spec, input.key()) != null) {
                builder.set(input, (Double) value(spec, input.key()));
            }
        }
        String approach = (String) value(spec, "approach");
        if (approach != null) {
            builder.approach("visual".equals(approach) ? Approach.VISUAL : Approach.INSTRUMENT);
        } else if (!fromFile) {
            notes.add(Message.of("siting.note.approach-not-given").english());
        }
        Object clearance = value(spec, "clearance");
        if (clearance instanceof Double metres) {
            builder.clearance(SitingRequest.Clearance.CHOSEN).set(Input.CHOSEN_CLEARANCE, metres);
        } else if (clearance != null) {
            builder.clearance((SitingRequest.Clearance) clearance);
        }
        if (value(spec, "settings") != null) {
            builder.settings((SitingRequest.Settings) value(spec, "settings"));
        }
        if (value(spec, "side") != null) {
            builder.side((Side) value(spec, "side"));
        }
        List<Double> distances = (List<Double>) value(spec, "bar-distances-m");
        List<Double> settings = (List<Double>) value(spec, "bar-settings-deg");
        if (distances != null || settings != null) {
            builder.bars(distances == null ? List.of() : distances, settings == null ? List.of() : settings);
        }
        for (String choice : OWN_CHOICES) {
            text(spec, choice).ifPresent(chosen -> builder.option(choice, chosen));
        }
    }

    private static void refuseContradictions(CommandSpec spec) {
        if (given(spec, Input.SLOPE) && (given(spec, Input.GROUND_SPEED) || given(spec, Input.DESCENT))) {
            throw new UsageException("--slope-deg and --ground-speed-kt with --descent-ftmin exclude each other: both give the slope");
        }
        if (given(spec, Input.LENS_HEIGHT) && (given(spec, Input.LENS_ABOVE_GROUND) || given(spec, Input.GROUND_SLOPE))) {
            throw new UsageException("--lens-height-m and --ground-slope-percent or --lens-above-ground-m exclude each other: both give"
                    + " the height of the lenses");
        }
    }

    /** What the words say of slope and ground holds; what a file says of them is set aside, and said so. */
    private static void replaceWhatTheFileSays(CommandSpec spec, SitingRequest.Builder builder, List<String> notes) {
        if (given(spec, Input.GROUND_SPEED) || given(spec, Input.DESCENT)) {
            builder.set(Input.SLOPE, null);
        }
        boolean ground = given(spec, Input.LENS_HEIGHT) || given(spec, Input.GROUND_SLOPE);
        if (ground && builder.build().ground().isPresent()) {
            builder.ground(null);
            notes.add("The ground profile of the file is set aside for what was given.");
        }
    }

    private static boolean given(CommandSpec spec, Input input) {
        return value(spec, input.key()) != null;
    }

    /** Returns the side where one was asked for. */
    static Optional<Side> side(CommandSpec spec) {
        return Optional.ofNullable((Side) value(spec, "side"));
    }

    /** Returns the first option that describes a siting and was given, the rule set apart; empty where there is none. */
    static Optional<String> firstBesideRuleSet(CommandSpec spec) {
        return Stream.concat(WORDS.stream().filter(word -> !"rule-set".equals(word)),
                Arrays.stream(Input.values()).filter(input -> input != Input.CHOSEN_CLEARANCE).map(Input::key))
                .filter(name -> value(spec, name) != null).map(name -> "--" + name).findFirst();
    }
}

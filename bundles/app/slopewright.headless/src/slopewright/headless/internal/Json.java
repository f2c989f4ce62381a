package slopewright.headless.internal;

import java.io.PrintStream;
import java.util.OptionalDouble;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import slopewright.evaluation.MadeFrom;
import slopewright.messages.Printable;
import slopewright.model.io.Program;

/** Makes JSON documents: the same bytes for the same content, numbers to the ninth decimal. */
final class Json {

    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final Escapes ESCAPES = new Escapes();
    private static final double STEPS = 1e9;

    private Json() {
    }

    /** Writes what would steer a terminal by its number, so that it is read back as it was. */
    private static final class Escapes extends CharacterEscapes {

        private static final long serialVersionUID = 1;

        @Override
        public int[] getEscapeCodesForAscii() {
            int[] codes = standardAsciiEscapesForJSON();
            codes[0x7F] = ESCAPE_STANDARD;
            return codes;
        }

        @Override
        public SerializableString getEscapeSequence(int letter) {
            return Printable.isSteering(letter) ? new SerializedString(String.format("\\u%04X", letter)) : null;
        }
    }

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static ArrayNode array() {
        return MAPPER.createArrayNode();
    }

    /** Puts a number; null where it is not finite. */
    static void put(ObjectNode node, String name, double number) {
        if (Double.isFinite(number)) {
            node.put(name, rounded(number));
        } else {
            node.putNull(name);
        }
    }

    static void put(ObjectNode node, String name, OptionalDouble number) {
        put(node, name, number.orElse(Double.NaN));
    }

    private static double rounded(double number) {
        double scaled = number * STEPS;
        return Math.abs(scaled) < Long.MAX_VALUE / 4 ? Math.round(scaled) / STEPS + 0.0 : number;
    }

    /** Prints a document with what it was made from: {@link MadeFrom#facts()}. */
    static void print(ObjectNode node, MadeFrom made, PrintStream out) {
        node.set("madeFrom", object(made));
        print(node, out);
    }

    /** Returns what something was made from. */
    static ObjectNode object(MadeFrom made) {
        ObjectNode node = object();
        made.facts().forEach(node::put);
        return node;
    }

    /** Prints a document; one that is an object says first in which form it is, 1 where it does not say so itself, and of which program. */
    static void print(JsonNode node, PrintStream out) {
        JsonNode whole = node instanceof ObjectNode object && !node.has("schema")
                ? object().put("schema", 1).put("program", Program.TEXT).setAll(object) : node;
        try {
            out.print(MAPPER.writer(ESCAPES).writeValueAsString(whole).replace("\r\n", "\n"));
            out.print('\n');
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}

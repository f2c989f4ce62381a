package slopewright.headless.internal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import slopewright.messages.Argument;
import slopewright.messages.Message;

/** Writes a message as data, with its English words beside. */
final class MessageJson {
    private MessageJson() {
    }

    static ObjectNode of(Message message) {
        ObjectNode node = Json.object();
        node.put("key", message.key());
        ArrayNode arguments = node.putArray("arguments");
        message.arguments().forEach(argument -> arguments.add(of(argument)));
        node.put("text", message.english());
        return node;
    }

    private static ObjectNode of(Argument argument) {
        if (argument instanceof Message message) {
            return of(message);
        }
        ObjectNode node = Json.object();
        if (argument instanceof Argument.Quantity quantity) {
            node.put("value", quantity.value());
            node.put("unit", quantity.notation().unit());
        } else if (argument instanceof Argument.Name name) {
            node.put("name", name.text());
        } else if (argument instanceof Argument.Term term) {
            node.put("term", term.key());
        } else if (argument instanceof Argument.Series series) {
            ArrayNode items = node.putArray("items");
            series.items().forEach(item -> items.add(of(item)));
        }
        return node;
    }
}

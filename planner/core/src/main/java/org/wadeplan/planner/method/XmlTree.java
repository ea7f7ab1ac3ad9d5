package org.wadeplan.planner.method;

import java.io.ByteArrayInputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Reads an XML file into memory with document types and outside entities off, so that a hostile file can neither grow
 * without end nor reach for other files.
 */
final class XmlTree {

    private static final int DEEPEST = 100;

    private final String file;
    private final Deque<Open> open = new ArrayDeque<>();
    private Optional<XmlElement> root = Optional.empty();

    private XmlTree(String file) {
        this.file = file;
    }

    /** An element whose end has not come yet. */
    private record Open(
            String name,
            String namespace,
            Map<String, String> attributes,
            StringBuilder text,
            List<XmlElement> children,
            int line) {

        XmlElement closed() {
            return new XmlElement(name, namespace, attributes, text.toString(), List.copyOf(children), line);
        }
    }

    static Checked<XmlElement> read(byte[] bytes, String file) {
        XmlTree tree = new XmlTree(file);
        try {
            XMLStreamReader reader = factory().createXMLStreamReader(new ByteArrayInputStream(bytes));
            return tree.readAll(reader);
        } catch (XMLStreamException broken) {
            // The parser's own text follows the machine's language, so only the place is taken from it.
            int line = Math.max(
                    1,
                    Optional.ofNullable(broken.getLocation())
                            .map(at -> at.getLineNumber())
                            .orElse(1));
            return Checked.failed(tree.broken("dmn-not-xml", line, "this is not well-formed XML from here on"));
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory;
    }

    private Checked<XmlElement> readAll(XMLStreamReader reader) throws XMLStreamException {
        while (reader.hasNext()) {
            int event = reader.next();
            int line = reader.getLocation().getLineNumber();
            if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
                return Checked.failed(broken("dmn-doctype", line, "the file declares a document type or an entity"));
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                if (open.size() >= DEEPEST) {
                    return Checked.failed(broken("dmn-too-deep", line, "elements are nested more than 100 deep"));
                }
                open.push(started(reader, line));
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                close();
            } else if (reader.hasText() && event != XMLStreamConstants.COMMENT && !open.isEmpty()) {
                open.peek().text().append(reader.getText());
            }
        }
        return root.map(Checked::of)
                .orElseGet(() -> Checked.failed(broken("dmn-not-xml", 1, "the file holds no element")));
    }

    private void close() {
        XmlElement closed = open.pop().closed();
        if (open.isEmpty()) {
            root = Optional.of(closed);
        } else {
            open.peek().children().add(closed);
        }
    }

    private static Open started(XMLStreamReader reader, int line) {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            if (Optional.ofNullable(reader.getAttributeNamespace(i)).orElse("").isEmpty()) {
                attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
            }
        }
        String namespace = Optional.ofNullable(reader.getNamespaceURI()).orElse("");
        return new Open(reader.getLocalName(), namespace, attributes, new StringBuilder(), new ArrayList<>(), line);
    }

    private Problem broken(String code, int line, String found) {
        return Problem.error(
                code,
                SourcePlace.line(file, line),
                found,
                "a DMN 1.1 to 1.5 file without a document type",
                "save the table again from your DMN modeller");
    }
}

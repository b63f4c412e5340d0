package org.drillsheaf.handout.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.drillsheaf.Problems;
import org.jspecify.annotations.Nullable;

/** A drawn logo: shapes with one colour each. No text, no styles, no links, nothing that is found elsewhere or moves. */
final class SvgLogo {
    private static final Set<String> ELEMENTS =
            Set.of("svg", "g", "path", "circle", "ellipse", "rect", "line", "polyline", "polygon", "title", "desc");
    private static final Set<String> ATTRIBUTES = Set.of(
            "version",
            "id",
            "viewBox",
            "width",
            "height",
            "d",
            "points",
            "x",
            "y",
            "x1",
            "y1",
            "x2",
            "y2",
            "cx",
            "cy",
            "r",
            "rx",
            "ry",
            "fill",
            "stroke",
            "stroke-width",
            "fill-rule",
            "transform",
            "role",
            "aria-label");
    private static final Map<String, Integer> COLOUR_NAMES =
            Map.of("black", 0x000000, "white", 0xFFFFFF, "currentColor", 0x000000);
    private static final Pattern COLOUR = Pattern.compile("#([0-9A-Fa-f]{6}|[0-9A-Fa-f]{3})");
    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)");
    private static final int MOST_SHAPES = 2000;

    private final String file;
    private final Problems problems;
    private final List<Drawn> shapes = new ArrayList<>();
    private final Deque<Look> looks = new ArrayDeque<>();
    private double @Nullable [] box;

    private record Look(
            @Nullable Color fill, @Nullable Color stroke, double strokeWidth, boolean evenOdd, AffineTransform place) {
        static final Look PLAIN = new Look(Color.BLACK, null, 1, false, new AffineTransform());
    }

    private record Drawn(Shape shape, Look look) {}

    /** What is not allowed, with its place. */
    private static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String what) {
            super(what);
        }
    }

    private SvgLogo(String file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    static Optional<Picture> read(String file, byte[] content, Problems problems) {
        return new SvgLogo(file, problems).picture(content);
    }

    private Optional<Picture> picture(byte[] content) {
        int line = 0;
        try {
            XMLStreamReader reader = reader(content);
            try {
                while (reader.hasNext()) {
                    int event = reader.next();
                    line = reader.getLocation().getLineNumber();
                    take(event, reader);
                }
            } finally {
                reader.close();
            }
            return Optional.of(painted());
        } catch (Refused e) {
            problems.error(file, line, String.valueOf(e.getMessage()), "Keep only plain shapes with colours");
        } catch (XMLStreamException e) {
            problems.error(
                    file,
                    e.getLocation() == null ? line : e.getLocation().getLineNumber(),
                    "The logo is no well-formed SVG",
                    "Save it again");
        }
        return Optional.empty();
    }

    private static XMLStreamReader reader(byte[] content) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing is read from elsewhere");
        });
        return factory.createXMLStreamReader(new ByteArrayInputStream(content));
    }

    private void take(int event, XMLStreamReader reader) throws Refused {
        switch (event) {
            case XMLStreamConstants.START_ELEMENT -> open(reader);
            case XMLStreamConstants.END_ELEMENT -> looks.pop();
            case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                throw new Refused("A document type or an entity is not allowed in a logo");
            case XMLStreamConstants.PROCESSING_INSTRUCTION ->
                throw new Refused("A style sheet or another instruction is not allowed in a logo");
            default -> {}
        }
    }

    private void open(XMLStreamReader reader) throws Refused {
        String name = reader.getLocalName();
        if (!ELEMENTS.contains(name) || !"http://www.w3.org/2000/svg".equals(reader.getNamespaceURI())) {
            throw new Refused("“" + name + "” is not allowed in a logo");
        }
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String attribute = reader.getAttributeLocalName(i);
            boolean plain = reader.getAttributeNamespace(i) == null
                    || reader.getAttributeNamespace(i).isEmpty();
            if (!plain || !ATTRIBUTES.contains(attribute)) {
                throw new Refused("“" + attribute + "” of “" + name + "” is not allowed in a logo");
            }
        }
        if (looks.isEmpty()) {
            box = box(reader);
        }
        Look look = look(looks.isEmpty() ? Look.PLAIN : looks.peek(), reader);
        looks.push(look);
        Optional<Shape> shape = shape(name, reader);
        if (shape.isPresent()) {
            if (shapes.size() == MOST_SHAPES) {
                throw new Refused("The logo has more than " + MOST_SHAPES + " shapes");
            }
            shapes.add(new Drawn(shape.get(), look));
        }
    }

    private static double[] box(XMLStreamReader reader) throws Refused {
        String view = reader.getAttributeValue(null, "viewBox");
        List<Double> numbers = view == null
                ? List.of(0.0, 0.0, number(reader, "width", 0), number(reader, "height", 0))
                : numbers(view);
        if (numbers.size() != 4
                || !(numbers.get(2) > 0 && numbers.get(3) > 0)
                || numbers.stream().anyMatch(n -> Math.abs(n) > 1e5)) {
            throw new Refused("The logo does not say how large it is");
        }
        return numbers.stream().mapToDouble(n -> n).toArray();
    }

    private static Look look(Look before, XMLStreamReader reader) throws Refused {
        AffineTransform place = new AffineTransform(before.place());
        String transform = reader.getAttributeValue(null, "transform");
        if (transform != null) {
            try {
                place.concatenate(AWTTransformProducer.createAffineTransform(transform));
            } catch (ParseException e) {
                throw new Refused("“" + transform + "” moves nothing that we know");
            }
        }
        String rule = reader.getAttributeValue(null, "fill-rule");
        return new Look(
                colour(reader, "fill", before.fill()),
                colour(reader, "stroke", before.stroke()),
                number(reader, "stroke-width", before.strokeWidth()),
                rule == null ? before.evenOdd() : rule.equals("evenodd"),
                place);
    }

    private static @Nullable Color colour(XMLStreamReader reader, String attribute, @Nullable Color before)
            throws Refused {
        String text = reader.getAttributeValue(null, attribute);
        if (text == null) {
            return before;
        } else if (text.equals("none")) {
            return null;
        } else if (COLOUR_NAMES.containsKey(text)) {
            return new Color(COLOUR_NAMES.get(text));
        }
        Matcher colour = COLOUR.matcher(text);
        if (!colour.matches()) {
            throw new Refused("“" + text + "” is no colour like #1A1A1A");
        }
        String digits = colour.group(1);
        return new Color(Integer.parseInt(digits.length() == 3 ? digits.replaceAll("(.)", "$1$1") : digits, 16));
    }

    private static Optional<Shape> shape(String name, XMLStreamReader reader) throws Refused {
        return switch (name) {
            case "path" -> Optional.of(path(reader));
            case "circle" -> {
                double r = number(reader, "r", 0);
                yield Optional.of(ellipse(reader, r, r));
            }
            case "ellipse" -> Optional.of(ellipse(reader, number(reader, "rx", 0), number(reader, "ry", 0)));
            case "rect" ->
                Optional.of(new RoundRectangle2D.Double(
                        number(reader, "x", 0),
                        number(reader, "y", 0),
                        number(reader, "width", 0),
                        number(reader, "height", 0),
                        2 * number(reader, "rx", 0),
                        2 * number(reader, "ry", number(reader, "rx", 0))));
            case "line" ->
                Optional.of(new Line2D.Double(
                        number(reader, "x1", 0),
                        number(reader, "y1", 0),
                        number(reader, "x2", 0),
                        number(reader, "y2", 0)));
            case "polyline", "polygon" -> Optional.of(corners(reader, name.equals("polygon")));
            default -> Optional.empty();
        };
    }

    private static Shape path(XMLStreamReader reader) throws Refused {
        String d = reader.getAttributeValue(null, "d");
        try {
            return AWTPathProducer.createShape(new StringReader(d == null ? "" : d), Path2D.WIND_NON_ZERO);
        } catch (ParseException | java.io.IOException e) {
            throw new Refused("A path of the logo cannot be read");
        }
    }

    private static Shape ellipse(XMLStreamReader reader, double rx, double ry) throws Refused {
        return new Ellipse2D.Double(number(reader, "cx", 0) - rx, number(reader, "cy", 0) - ry, 2 * rx, 2 * ry);
    }

    private static Shape corners(XMLStreamReader reader, boolean closed) throws Refused {
        String points = reader.getAttributeValue(null, "points");
        List<Double> numbers = numbers(points == null ? "" : points);
        Path2D path = new Path2D.Double();
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            if (i == 0) {
                path.moveTo(numbers.get(0), numbers.get(1));
            } else {
                path.lineTo(numbers.get(i), numbers.get(i + 1));
            }
        }
        if (closed && !numbers.isEmpty()) {
            path.closePath();
        }
        return path;
    }

    private static double number(XMLStreamReader reader, String attribute, double usual) throws Refused {
        String text = reader.getAttributeValue(null, attribute);
        if (text == null) {
            return usual;
        }
        String plain = text.strip().replaceAll("(px|mm|pt)$", "");
        if (!NUMBER.matcher(plain).matches()) {
            throw new Refused("“" + text + "” is no number");
        }
        return Double.parseDouble(plain);
    }

    private static List<Double> numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(m -> Double.parseDouble(m.group()))
                .toList();
    }

    private Picture painted() throws Refused {
        double[] view = box;
        if (view == null || shapes.isEmpty()) {
            throw new Refused("The logo shows nothing");
        }
        List<Drawn> drawn = List.copyOf(shapes);
        // The size is made to measure later; only its shape counts here.
        double scale = 10 / Math.max(view[2], view[3]);
        return new Picture(view[2] * scale, view[3] * scale, surface -> {
            surface.clip(new java.awt.geom.Rectangle2D.Double(0, 0, view[2] * scale, view[3] * scale));
            surface.scale(scale, scale);
            surface.translate(-view[0], -view[1]);
            drawn.forEach(one -> paint(one, surface));
        });
    }

    private static void paint(Drawn one, Graphics2D surface) {
        Path2D shape = new Path2D.Double(one.shape());
        shape.setWindingRule(one.look().evenOdd() ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
        Shape placed = one.look().place().createTransformedShape(shape);
        if (one.look().fill() != null) {
            surface.setColor(one.look().fill());
            surface.fill(placed);
        }
        if (one.look().stroke() != null && one.look().strokeWidth() > 0) {
            surface.setColor(one.look().stroke());
            surface.fill(one.look()
                    .place()
                    .createTransformedShape(
                            new BasicStroke((float) one.look().strokeWidth()).createStrokedShape(shape)));
        }
    }
}

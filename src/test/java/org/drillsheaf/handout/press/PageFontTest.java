package org.drillsheaf.handout.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.fop.apps.io.InternalResourceResolver;
import org.apache.fop.apps.io.ResourceResolverFactory;
import org.apache.fop.fonts.EmbedFontInfo;
import org.apache.fop.fonts.EmbeddingMode;
import org.apache.fop.fonts.EncodingMode;
import org.apache.fop.fonts.FontLoader;
import org.apache.fop.fonts.FontUris;
import org.apache.fop.fonts.MultiByteFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageFontTest {
    /** Asked with a number, as most questions to a font are: a size, a glyph, a sign. */
    private static final int ASKED = 37;

    private final FontFiles files = new FontFiles();
    private final KeptFonts kept = new KeptFonts(files);
    private final InternalResourceResolver resolver =
            ResourceResolverFactory.createInternalResourceResolver(LockedResources.BASE, new LockedResources(files));

    @ParameterizedTest
    @ValueSource(strings = {"source-sans-pro-600", "dejavu-sans-400"})
    void aKeptFontAnswersEveryQuestionAsOneReadAnew(String name) throws Exception {
        EmbedFontInfo font = font(name);
        kept.forDocument(font, resolver, true).mapChar('x');
        MultiByteFont anew = (MultiByteFont) FontLoader.loadFont(
                font.getFontUris(),
                null,
                true,
                EmbeddingMode.AUTO,
                EncodingMode.AUTO,
                true,
                true,
                resolver,
                false,
                false,
                false);

        Map<String, String> answers = answers(kept.forDocument(font, resolver, true));

        assertThat(answers).hasSizeGreaterThan(50).isEqualTo(answers(anew));
    }

    @Test
    void signsOfOneDocumentAreUnknownToTheNext() {
        PageFont first = kept.forDocument(font("source-sans-pro-400"), resolver, true);
        PageFont second = kept.forDocument(font("source-sans-pro-400"), resolver, true);

        assertThat("Marlow".chars().map(letter -> first.mapChar((char) letter))).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(second.getUsedGlyphs()).containsOnlyKeys(0);
        assertThat(second.hadMappingOperations()).isFalse();
        assertThat(second.mapChar('w')).isEqualTo((char) 1);
    }

    @Test
    void aFontOfTwentyThousandSignsIsNotKept() {
        kept.forDocument(font("source-sans-pro-400"), resolver, true);
        kept.forDocument(font("noto-sans-sc-400"), resolver, false);

        assertThat(files.keeps("res:font/source-sans-pro-400")).isTrue();
        assertThat(files.keeps("res:font/noto-sans-sc-400")).isFalse();
    }

    private static EmbedFontInfo font(String name) {
        return new EmbedFontInfo(new FontUris(URI.create("res:font/" + name), null), true, true, List.of(), null);
    }

    /** What a font says to each question that it can be asked without anything or with a number. */
    private static Map<String, String> answers(MultiByteFont font) throws ReflectiveOperationException {
        Map<String, String> answers = new TreeMap<>();
        for (Method question : MultiByteFont.class.getMethods()) {
            Class<?> answer = question.getReturnType();
            boolean plain = answer.isPrimitive() && answer != void.class
                    || answer == String.class
                    || answer == URI.class
                    || answer == int[].class
                    || answer == java.awt.Rectangle.class
                    || answer.isEnum()
                    || Set.class.isAssignableFrom(answer)
                    || Map.class.isAssignableFrom(answer);
            Class<?>[] asked = question.getParameterTypes();
            boolean changes = question.getName().startsWith("map");
            if (!plain
                    || changes
                    || question.getName().equals("hashCode")
                    || question.getName().equals("toString")) {
                continue;
            }
            if (asked.length == 0) {
                answers.put(question.getName(), told(question.invoke(font)));
            } else if (asked.length == 1
                    && asked[0] == int.class
                    && !question.getName().equals("getUnicodeFromGID")) {
                answers.put(question.getName() + " " + ASKED, told(question.invoke(font, ASKED)));
            }
        }
        font.mapChar('g');
        for (int size : new int[] {1, 999, 10_500}) {
            answers.put("width " + size, told(font.getWidth(1, size)));
            answers.put("box " + size, told(font.getBoundingBox(1, size)));
            answers.put("line " + size, told(font.getUnderlinePosition(size)));
        }
        answers.put("pairs", Arrays.deepToString(font.performPositioning("AVATAR To fit", "latn", "dflt", 10_500)));
        return answers;
    }

    private static String told(Object answer) {
        return answer instanceof int[] numbers ? Arrays.toString(numbers) : String.valueOf(answer);
    }
}

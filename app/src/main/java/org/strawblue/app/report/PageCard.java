package org.strawblue.app.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Base64;
import java.util.Map;
import org.strawblue.core.job.UnitSystem;

/** The card as one HTML file that needs nothing from anywhere: lettering, drawings, style and switch are inside. */
public final class PageCard {

    private static final String PACKAGE = "org.strawblue.app.pages";

    private PageCard() {}

    /** @param system shown first; the page can switch to the other */
    public static String write(CardView card, UnitSystem system) {
        StringOutput out = new StringOutput(64 * 1024);
        engine().render("card.jte", Map.of("card", card, "look", look(), "system", system), out);
        return out.toString();
    }

    private static TemplateEngine engine() {
        return TemplateEngine.createPrecompiled(null, ContentType.Html, PageCard.class.getClassLoader(), PACKAGE);
    }

    private static PageLook look() {
        return new PageLook(
                Resource.text("page.css"),
                Resource.text("page.js"),
                base64("font/card-regular.woff2"),
                base64("font/card-semibold.woff2"));
    }

    private static String base64(String name) {
        return Base64.getEncoder().encodeToString(Resource.bytes(name));
    }
}

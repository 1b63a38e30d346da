package org.strawblue.app.json;

import java.io.IOException;
import org.strawblue.app.report.AmountWriter;
import org.strawblue.core.job.Item;
import org.strawblue.core.job.JobCard;
import org.strawblue.core.job.Step;
import org.strawblue.core.job.UnitSystem;

/** A job card as JSON; its pictures are left to the drawn forms. */
public final class CardJson {

    private CardJson() {}

    public static String of(JobCard card, UnitSystem system) {
        JsonText json = new JsonText(JsonUnits.of(system), new AmountWriter(system));
        return json.object(() -> {
            json.text("title", card.title());
            json.flag("refused", card.refused());
            json.texts("summary", card.summary());
            json.list("steps", card.steps(), step -> step(json, step));
            json.findings(card.findings());
            json.texts("unknowns", card.unknowns());
            json.list("have_ready", card.haveReady(), item -> item(json, item));
        });
    }

    private static void step(JsonText json, Step step) throws IOException {
        json.text("stage", step.stage().title());
        json.text("part", step.part());
        json.text("lead", step.lead());
        json.texts("then", step.then());
        json.list("figures", step.figures(), figure -> {
            json.text("label", figure.label());
            json.estimate(figure.estimate());
        });
        json.texts("reasons", step.reasons());
        json.list("hazards", step.hazards(), hazard -> {
            json.text("key", hazard.key());
            json.text("text", hazard.text());
        });
        json.findings(step.findings());
    }

    private static void item(JsonText json, Item item) throws IOException {
        json.text("what", item.what());
        json.text("why", item.why());
        json.flag("in_shop", item.inShop());
    }
}

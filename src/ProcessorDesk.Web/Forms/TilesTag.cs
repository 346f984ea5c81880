using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>
/// Up to seven choices as tiles: <c>&lt;tiles for="Input.Species" label="Animal" items="…" /&gt;</c>.
/// With <c>many="true"</c> any number of them may be ticked.
/// </summary>
[HtmlTargetElement("tiles")]
public sealed class TilesTag : ControlTag
{
    public IEnumerable<Choice> Items { get; set; } = [];

    public bool Many { get; set; }

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var legend = new TagBuilder("legend");
        legend.InnerHtml.Append(Label);
        var row = new TagBuilder("div");
        row.AddCssClass("tiles-row");
        foreach (var (item, place) in Items.Select((item, place) => (item, place))) row.InnerHtml.AppendHtml(Tile(item, place));

        var set = new TagBuilder("fieldset");
        HandOver(output, set);
        Describe(set);
        // A group can't be "invalid" to a screen reader; the words say it.
        set.Attributes.Remove("aria-invalid");
        if (Problems.Count > 0) set.AddCssClass("bad");
        set.InnerHtml.AppendHtml(legend);
        AppendWords(set.InnerHtml);
        set.InnerHtml.AppendHtml(row);

        output.TagName = null;
        output.Content.SetHtmlContent(set);
    }

    private TagBuilder Tile(Choice item, int place)
    {
        var input = new TagBuilder("input") { TagRenderMode = TagRenderMode.SelfClosing };
        input.Attributes["type"] = Many ? "checkbox" : "radio";
        // The first tile carries the field's own id, so that the error summary leads there.
        input.Attributes["id"] = place == 0 ? Id : $"{Id}-{place}";
        input.Attributes["name"] = Name;
        input.Attributes["value"] = item.Value;
        if (Values.Contains(item.Value)) input.Attributes["checked"] = "checked";
        if (item.Closed) input.Attributes["disabled"] = "disabled";

        var words = new TagBuilder("span");
        words.InnerHtml.Append(item.Text);
        if (item.Hint != "")
        {
            var hint = new TagBuilder("small");
            hint.InnerHtml.Append(item.Hint);
            words.InnerHtml.Append(" ").AppendHtml(hint);
        }

        var tile = new TagBuilder("label");
        tile.AddCssClass("tile");
        tile.InnerHtml.AppendHtml(input).AppendHtml(words);
        return tile;
    }
}

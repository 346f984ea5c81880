using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>More than seven choices, or a list that grows: <c>&lt;pick for="Input.ProductId" label="Product" items="…" none="Choose one" /&gt;</c>.</summary>
[HtmlTargetElement("pick")]
public sealed class PickTag : ControlTag
{
    public IEnumerable<Choice> Items { get; set; } = [];

    /// <summary>Words for "nothing chosen yet"; left out where something always is.</summary>
    public string None { get; set; } = "";

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var label = new TagBuilder("label");
        label.Attributes["for"] = Id;
        label.InnerHtml.Append(Label);

        var select = new TagBuilder("select");
        select.Attributes["id"] = Id;
        select.Attributes["name"] = Name;
        Describe(select);
        HandOver(output, select);
        if (None != "") select.InnerHtml.AppendHtml(Option(new Choice("", None)));
        foreach (var item in Items) select.InnerHtml.AppendHtml(Option(item));

        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", Problems.Count > 0 ? "field bad" : "field");
        output.Content.AppendHtml(label);
        AppendWords(output.Content);
        output.Content.AppendHtml(select);
    }

    private TagBuilder Option(Choice item)
    {
        var option = new TagBuilder("option");
        option.Attributes["value"] = item.Value;
        if (Values.Contains(item.Value)) option.Attributes["selected"] = "selected";
        if (item.Closed) option.Attributes["disabled"] = "disabled";
        option.InnerHtml.Append(item.Hint == "" ? item.Text : $"{item.Text} – {item.Hint}");
        return option;
    }
}

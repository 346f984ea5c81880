using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>Yes or no: <c>&lt;tick for="Input.Rush" label="Rush order" hint="…" /&gt;</c>. Sends "false" when it is not ticked.</summary>
[HtmlTargetElement("tick")]
public sealed class TickTag : ControlTag
{
    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var box = new TagBuilder("input") { TagRenderMode = TagRenderMode.SelfClosing };
        box.Attributes["type"] = "checkbox";
        box.Attributes["id"] = Id;
        box.Attributes["name"] = Name;
        box.Attributes["value"] = "true";
        if (Values.Any(v => bool.TryParse(v, out var yes) && yes)) box.Attributes["checked"] = "checked";
        Describe(box);
        HandOver(output, box);

        var unticked = new TagBuilder("input") { TagRenderMode = TagRenderMode.SelfClosing };
        unticked.Attributes["type"] = "hidden";
        unticked.Attributes["name"] = Name;
        unticked.Attributes["value"] = "false";

        var label = new TagBuilder("label");
        label.AddCssClass("tick");
        label.InnerHtml.AppendHtml(box).Append(Label);

        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", Problems.Count > 0 ? "field bad" : "field");
        output.Content.AppendHtml(label).AppendHtml(unticked);
        AppendWords(output.Content);
    }
}

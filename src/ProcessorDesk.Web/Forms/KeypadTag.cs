using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>Large digits for wet hands, written into a field: <c>&lt;keypad for="Input.Gross" /&gt;</c>. Not there without script.</summary>
[HtmlTargetElement("keypad", TagStructure = TagStructure.WithoutEndTag)]
public sealed class KeypadTag : TagHelper
{
    private static readonly (string Key, string Face, string Spoken)[] Keys =
    [
        ("7", "7", ""), ("8", "8", ""), ("9", "9", ""),
        ("4", "4", ""), ("5", "5", ""), ("6", "6", ""),
        ("1", "1", ""), ("2", "2", ""), ("3", "3", ""),
        (".", ".", "Point"), ("0", "0", ""), ("back", "⌫", "Take back the last figure"),
    ];

    [HtmlAttributeName("for")]
    public ModelExpression For { get; set; } = null!;

    /// <summary>Whole figures only, such as a PIN or a lug's number: no point, a key to clear in its place.</summary>
    public bool Whole { get; set; }

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var name = ViewContext.ViewData.TemplateInfo.GetFullHtmlFieldName(For.Name);
        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", "keypad");
        output.Attributes.SetAttribute("role", "group");
        output.Attributes.SetAttribute("aria-label", "Keypad");
        output.Attributes.SetAttribute("data-keypad", TagBuilder.CreateSanitizedId(name, "_"));
        foreach (var (key, face, spoken) in Keys.Select(k => Whole && k.Key == "." ? ("clear", "Clear", "") : k))
        {
            var button = new TagBuilder("button");
            button.Attributes["type"] = "button";
            button.Attributes["data-key"] = key;
            if (spoken != "") button.Attributes["aria-label"] = spoken;
            button.InnerHtml.Append(face);
            output.Content.AppendHtml(button);
        }
    }
}

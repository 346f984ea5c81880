using System.Globalization;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>
/// First thing in every form that saves: <c>&lt;form-key version="@Model.Version" /&gt;</c>. Carries the key that makes a second
/// press harmless and the version the person saw, and makes Enter mean the form's main action, wherever other buttons stand.
/// </summary>
[HtmlTargetElement("form-key", TagStructure = TagStructure.WithoutEndTag)]
public sealed class FormKeyTag : TagHelper
{
    public const string Key = "FormKey";

    public const string VersionField = "Version";

    public int? Version { get; set; }

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = null;
        output.Content.AppendHtml(Hidden(Key, Sent(Key) ?? Guid.NewGuid().ToString("N")));
        if (Version is { } version)
            output.Content.AppendHtml(Hidden(VersionField, Sent(VersionField) ?? version.ToString(CultureInfo.InvariantCulture)));
        output.Content.AppendHtml(Enter());
    }

    // A form shown again is still the same form: it keeps its key and the version the person saw.
    private string? Sent(string name) => ViewContext.ViewData.ModelState[name]?.AttemptedValue is { Length: > 0 } sent ? sent : null;

    private static TagBuilder Hidden(string name, string value)
    {
        var input = new TagBuilder("input") { TagRenderMode = TagRenderMode.SelfClosing };
        input.Attributes["type"] = "hidden";
        input.Attributes["name"] = name;
        input.Attributes["value"] = value;
        return input;
    }

    private static TagBuilder Enter()
    {
        var button = new TagBuilder("button");
        button.AddCssClass("unseen");
        button.Attributes["type"] = "submit";
        button.Attributes["tabindex"] = "-1";
        button.Attributes["aria-hidden"] = "true";
        button.InnerHtml.Append("Enter");
        return button;
    }
}

using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>Gives a form token to a form that names its own address; the framework gives one only to a form that does not.</summary>
[HtmlTargetElement("form", Attributes = "action")]
public sealed class AddressedFormTag(IHtmlGenerator generator) : TagHelper
{
    [ViewContext, HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var method = context.AllAttributes["method"]?.Value?.ToString() ?? "get";
        if (!method.Equals("post", StringComparison.OrdinalIgnoreCase) || context.AllAttributes.ContainsName("asp-antiforgery")) return;
        output.PostContent.AppendHtml(generator.GenerateAntiforgery(ViewContext));
    }
}

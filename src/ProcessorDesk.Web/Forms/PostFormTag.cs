using Microsoft.AspNetCore.Http.Extensions;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>
/// Two things every form that posts needs. One that names its own address gets a form token, which the framework gives only to
/// one that does not. One that names none goes to its page and not to the handler whose button was pressed before: otherwise,
/// after "work it out", the main button would work it out once more instead of saving.
/// </summary>
[HtmlTargetElement("form")]
public sealed class PostFormTag(IHtmlGenerator generator) : TagHelper
{
    private const string Handler = "handler";

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var method = context.AllAttributes["method"]?.Value?.ToString() ?? "get";
        if (!method.Equals("post", StringComparison.OrdinalIgnoreCase)) return;
        if (context.AllAttributes.ContainsName("action"))
        {
            if (!context.AllAttributes.ContainsName("asp-antiforgery"))
                output.PostContent.AppendHtml(generator.GenerateAntiforgery(ViewContext));
        }
        else if (!output.Attributes.ContainsName("action") && ViewContext.HttpContext.Request is var request && request.Query.ContainsKey(Handler))
        {
            output.Attributes.SetAttribute("action", Address(request));
        }
    }

    private static string Address(HttpRequest request)
    {
        var rest = new QueryBuilder(request.Query.Where(pair => !pair.Key.Equals(Handler, StringComparison.OrdinalIgnoreCase)));
        return request.PathBase + request.Path + rest;
    }
}

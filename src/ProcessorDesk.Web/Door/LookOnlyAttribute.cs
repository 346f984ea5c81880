using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;

namespace ProcessorDesk.Web.Door;

/// <summary>The page is looked at and never sent to: whatever is not a GET is refused before anything of it is read.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class LookOnlyAttribute : Attribute, IResourceFilter
{
    public void OnResourceExecuting(ResourceExecutingContext context)
    {
        var method = context.HttpContext.Request.Method;
        if (!HttpMethods.IsGet(method) && !HttpMethods.IsHead(method))
            context.Result = new StatusCodeResult(StatusCodes.Status405MethodNotAllowed);
    }

    public void OnResourceExecuted(ResourceExecutedContext context)
    {
    }
}

using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Door;

/// <summary>Links that are offered only to those who may open them.</summary>
public static class OpenPages
{
    /// <summary>The address of a station's page about one thing; null where this role may not open it or there is no such page.</summary>
    /// <param name="page">The page's path: "/Counter/Order".</param>
    /// <param name="key">What the page calls the thing's id.</param>
    public static string? IfOpen(this IUrlHelper url, StaffRole role, string page, string key, int id) =>
        Stations.All.Single(station => station.Folder == page.Split('/')[1]).IsOpenTo(role)
            ? url.Page(page, new RouteValueDictionary { [key] = id })
            : null;
}

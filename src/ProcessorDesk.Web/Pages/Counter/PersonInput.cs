using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>Somebody around the job who is not the owner, as typed; empty where it is the owner.</summary>
public sealed class PersonInput
{
    public PersonRole Role { get; set; }

    public string Name { get; set; } = "";

    public string Phone { get; set; } = "";

    public string Address { get; set; } = "";

    /// <summary>One line for each role.</summary>
    public static List<PersonInput> Each() => [.. Enum.GetValues<PersonRole>().Select(role => new PersonInput { Role = role })];

    public static IEnumerable<JobPerson> Read(IReadOnlyList<PersonInput> people, ModelStateDictionary state, string prefix)
    {
        for (var i = 0; i < people.Count; i++)
        {
            var person = people[i];
            if (person.Name.Trim() != "")
                yield return new JobPerson(person.Role, person.Name, person.Phone, person.Address);
            else if (person.Phone.Trim() != "" || person.Address.Trim() != "")
                state.AddModelError($"{prefix}[{i}].Name", "Type the name that goes with this phone or address.");
        }
    }
}
